/** The tuning run on the invented tank, told in words: tank, reading, advice, action, and round again. */
package io.github.weirwise.demo.text;
