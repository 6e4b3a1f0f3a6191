/**
 * Floor 8: what is printed or exported.
 *
 * <p>In: values of the lower floors and a {@link io.github.weirwise.report.PhraseBook}. Out: text that a person prints or
 * another program opens - plain text, one HTML page with a drawing, an iCalendar file. Nothing here writes files; the caller
 * gets strings.
 */
package io.github.weirwise.sheet;
