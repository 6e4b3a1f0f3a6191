/** What the window works on: tank, journal, advice, and the hand that takes a step. Nothing here is painted. */
package io.github.weirwise.demo.desk;
