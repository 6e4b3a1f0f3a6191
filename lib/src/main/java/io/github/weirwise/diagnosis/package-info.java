/**
 * Floor 5: what a journal says about a unit. {@link io.github.weirwise.diagnosis.Belief} follows the sums for level and amount
 * ({@link io.github.weirwise.unit.Sum}) entry by entry, in a few branches weighed by their evidence;
 * {@link io.github.weirwise.diagnosis.Diagnosis} tells what that comes to, shared out over causes.
 */
package io.github.weirwise.diagnosis;
