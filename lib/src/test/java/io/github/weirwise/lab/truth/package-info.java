/**
 * The truths of the panel: one page a family, each with its own weir, its own gas lift, its own foam and its own effects of
 * fouled parts. No page uses another page, nor any formula, parameter or prior of the adviser.
 */
package io.github.weirwise.lab.truth;
