/**
 * Floor 2: the device. A {@link io.github.weirwise.unit.SkimmerUnit} and its
 * {@link io.github.weirwise.unit.Settings} go in, an {@link io.github.weirwise.unit.OperatingPoint} comes out;
 * {@link io.github.weirwise.unit.WeirSetting} solves the inverse. Everything that moves the water against the funnel
 * base is visible in {@link io.github.weirwise.unit.SteadyLaw}. Whoever wants the foam by height instead of by means asks
 * {@link io.github.weirwise.unit.ReferenceColumn}, in full or as a sketch; the two forms agree where a unit gives its
 * wanted amount, and {@code OperatingPoint} warns by what factor they part away from there.
 *
 * <p>Heights are millimetres over the floor of the skimmer chamber, flows litres per hour, skimmate millilitres per day.
 */
package io.github.weirwise.unit;
