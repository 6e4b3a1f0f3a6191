/**
 * Floor 1: how dark and which colour water with dissolved organic matter is.
 *
 * <p>Order of use: {@code DissolvedColour} (absorption at 440 nm and spectral slope) gives what daylight becomes on a path
 * through it, a {@code Tristimulus}; that gives an {@code Srgb} to paint with. {@code PlatinumCobalt} puts the absorption
 * on the scale that water analysts use. The tables are those of the CIE: standard observer 1931 (ISO/CIE 11664-1) and
 * illuminant D65 (ISO/CIE 11664-2).
 */
package io.github.weirwise.internal.physics.colour;
