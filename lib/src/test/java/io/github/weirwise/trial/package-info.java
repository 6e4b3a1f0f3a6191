/**
 * The trial: hidden tanks with a truth of their own, the policies that try to put them right, and the counting.
 *
 * <p>{@link io.github.weirwise.trial.TankDraw} draws a tank from a seed; {@link io.github.weirwise.trial.HiddenTank} runs
 * it hour by hour by {@link io.github.weirwise.trial.TrueLaw}; {@link io.github.weirwise.trial.Keeper} turns the truth into
 * journal entries; a {@link io.github.weirwise.trial.Policy} answers with one step; {@link
 * io.github.weirwise.trial.TankRun} plays one tank to an {@link io.github.weirwise.trial.Outcome}; {@link
 * io.github.weirwise.trial.Trial} plays all of them and {@link io.github.weirwise.trial.Score} counts.
 *
 * <p>The truth shares no formula, closure or parameter with the library: of the main code it uses the unit's data sheet
 * (sizes, rated flow and air, target), the types that hand readings and steps over, and the names of causes. It carries a
 * small load, fouling and time model of its own instead of the library's tank.
 */
package io.github.weirwise.trial;
