/**
 * Floor 5: what the journal says about the unit. {@link io.github.weirwise.diagnosis.Cause} is the table of causes; a
 * belief over causes and over the unit's own unknowns is carried through the journal by stated likelihoods and told as a
 * {@link io.github.weirwise.diagnosis.Diagnosis}.
 */
package io.github.weirwise.diagnosis;
