/**
 * Floor 1: how much water passes a weir, an opening or a pipe, and how high it has to stand for that.
 *
 * <p>In: lengths in m, heads in m above a crest or an axis. Out: discharges in m3/s, or heads for given discharges.
 * Pure functions; published ranges stand with each.
 */
package io.github.weirwise.internal.physics.hydraulics;
