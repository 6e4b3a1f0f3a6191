/** Setting up and looking after: does it fit, first start, and what is due. */
package io.github.weirwise.demo.care;
