/**
 * Floor 1: how dark and which colour water with dissolved organic matter is.
 *
 * <p>In: the absorption at 440 nm (1/m, base e). Out: platinum-cobalt units.
 */
package io.github.weirwise.colour;
