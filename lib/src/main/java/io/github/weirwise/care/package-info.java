/**
 * Floor 5: what has to be looked after, and when.
 *
 * <p>In: the {@link io.github.weirwise.reading.Journal}. From it follow when each
 * {@link io.github.weirwise.care.CareTask} was last done ({@link io.github.weirwise.care.TaskDone}) and how fast its part
 * fouls on this unit ({@link io.github.weirwise.care.CareInterval}). Out: a {@link io.github.weirwise.care.CarePlan} of
 * what is due, and the {@link io.github.weirwise.care.CareDate}s of the next weeks.
 */
package io.github.weirwise.care;
