/** Setting up and looking after: does it fit, first start, and what must never be done. */
package io.github.weirwise.demo.care;
