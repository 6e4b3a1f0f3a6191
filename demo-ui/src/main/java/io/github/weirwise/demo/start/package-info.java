/** The start page: one's own units, and apart from them the invented tank and practice. */
package io.github.weirwise.demo.start;
