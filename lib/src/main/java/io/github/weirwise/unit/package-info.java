/**
 * Floor 2: the device. A {@link io.github.weirwise.unit.SkimmerUnit} and its
 * {@link io.github.weirwise.unit.Settings} go in, an {@link io.github.weirwise.unit.OperatingPoint} comes out;
 * {@link io.github.weirwise.unit.WeirSetting} solves the inverse. Everything that moves the water against the funnel
 * base is visible in {@link io.github.weirwise.unit.SteadyLaw}. How much comes over answers as
 * {@link io.github.weirwise.unit.LipAnswer} states, and {@code OperatingPoint} warns by what factor another unit could part from it. The
 * foam by height, which the fast form is judged against, lives in the test tree.
 *
 * <p>Heights are millimetres over the floor of the skimmer chamber, flows litres per hour, skimmate millilitres per day.
 */
package io.github.weirwise.unit;
