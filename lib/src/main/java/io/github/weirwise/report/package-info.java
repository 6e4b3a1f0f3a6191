/**
 * Floor 0: what every other floor says things with.
 *
 * <p>A number that a person reads is a {@link io.github.weirwise.report.Quantity}; a sentence is a
 * {@link io.github.weirwise.report.Phrase} (a key and typed values); a justification is a
 * {@link io.github.weirwise.report.Reason} tree; doubt that comes with a result is a
 * {@link io.github.weirwise.report.Warning}. A {@link io.github.weirwise.report.PhraseBook} turns them into words.
 */
package io.github.weirwise.report;
