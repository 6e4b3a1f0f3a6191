/** Measures the real window: first paint, frames a second, and how long single events keep the event thread. */
package io.github.weirwise.demo.timing;
