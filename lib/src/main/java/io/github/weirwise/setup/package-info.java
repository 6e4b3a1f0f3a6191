/**
 * Floor 3: does a unit fit a tank, and how it is filled and started for the first time.
 *
 * <p>In: an {@link io.github.weirwise.setup.Installation}, measured with a ruler and read off data sheets. From it
 * follow the {@link io.github.weirwise.setup.ReturnPoint} of the return pump, then the
 * {@link io.github.weirwise.setup.DrainBack} at a power cut and the
 * {@link io.github.weirwise.setup.FirstFilling}. Out: a {@link io.github.weirwise.setup.FitCheck} of one
 * answer a {@link io.github.weirwise.setup.Question}, and a
 * {@link io.github.weirwise.setup.StartUpPlan} of ordered steps. Heights count from the base on which the filter
 * stands unless the name says otherwise.
 */
package io.github.weirwise.setup;
