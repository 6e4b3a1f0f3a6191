/** The one round of a visit: was it as expected, read, do one thing, leave it until then. */
package io.github.weirwise.demo.round;
