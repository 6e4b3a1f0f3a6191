/**
 * The picture of the unit. A {@link io.github.weirwise.demo.picture.Scene} (what is so) and a
 * {@link io.github.weirwise.demo.picture.View} (model millimetres to pixels) go into the painters; names end in
 * {@code Mm} for model heights and in {@code Px} for the screen.
 */
package io.github.weirwise.demo.picture;
