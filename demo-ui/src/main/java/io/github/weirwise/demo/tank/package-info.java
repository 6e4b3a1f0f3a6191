/** The invented tank on a virtual clock: the demo's stand-in for the real thing. */
package io.github.weirwise.demo.tank;
