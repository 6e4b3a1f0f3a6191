/**
 * Floor 8: readings out of a table that a spreadsheet or a controller saved.
 *
 * <p>In: the text of a CSV file, a time zone and, where it matters, the order of day and month. Out: a
 * {@link io.github.weirwise.reading.Journal}, and each thing that was wrong with its row and column. Every scanner here reads
 * a character once, so the time grows with the length of the table and with nothing else. No file is opened.
 */
package io.github.weirwise.table;
