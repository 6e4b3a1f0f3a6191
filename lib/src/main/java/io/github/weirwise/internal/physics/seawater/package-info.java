/**
 * Floor 1: what salt and warmth do to water.
 *
 * <p>In: practical salinity and temperature on ITS-90. Out: density, viscosity and the oxygen that air
 * at one atmosphere keeps in solution. Everything is SI, pure and thread-safe. Published ranges
 * stand with each function; arguments that cannot be sea water at all throw.
 */
package io.github.weirwise.internal.physics.seawater;
