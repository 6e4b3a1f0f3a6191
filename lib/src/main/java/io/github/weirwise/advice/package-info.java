/**
 * Floor 6: the next step. From a {@link io.github.weirwise.diagnosis.Diagnosis} to one
 * {@link io.github.weirwise.advice.Step}, with when to look again, what to expect, why, and what would prove it wrong.
 */
package io.github.weirwise.advice;
