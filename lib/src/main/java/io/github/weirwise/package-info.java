/**
 * Floor 9, the front door. {@code settings -> OperatingPoint -> readings -> belief -> advice -> action -> settings}: open
 * one package a step.
 */
package io.github.weirwise;
