/**
 * The commands behind the figures in the documents, one class each. A command has a {@code main}, prints what it finds as
 * it goes, ends with one line {@code result: key=value ...} of plain numbers, and is named in
 * {@link io.github.weirwise.evidence.Evidence} and in docs/commands.md.
 */
package io.github.weirwise.evidence;
