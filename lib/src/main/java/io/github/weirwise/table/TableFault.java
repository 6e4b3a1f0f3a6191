package io.github.weirwise.table;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import java.util.Objects;

/**
 * One thing that is wrong in a table.
 *
 * @param row row as a spreadsheet counts it, the header is 1; 0 for the table as a whole
 * @param column column as a spreadsheet counts it, from 1; 0 for the row as a whole
 * @param heading the column's heading as it stands in the table; empty when there is none
 * @param what what is wrong and what to try
 */
public record TableFault(int row, int column, String heading, Phrase what) {
    /** Key of the question for the order of day and month. */
    private static final String DATE_ORDER = "table.dateOrder";

    /** Rejects nulls. */
    public TableFault {
        Objects.requireNonNull(heading, "heading");
        Objects.requireNonNull(what, "what");
    }

    /** The fault with its place as one sentence. */
    public Phrase words() {
        if (row == 0) {
            return Phrase.of("table.whole", what);
        }
        if (column == 0) {
            return Phrase.of("table.row", row, what);
        }
        return heading.isBlank()
                ? Phrase.of("table.place", row, letters(), what)
                : Phrase.of("table.cell", row, letters(), heading.strip(), what);
    }

    boolean asksForDateOrder() {
        return what.key().equals(DATE_ORDER);
    }

    /** The column as a spreadsheet names it: A, B, ... Z, AA. */
    public String letters() {
        StringBuilder letters = new StringBuilder();
        for (int rest = column; rest > 0; rest = (rest - 1) / 26) {
            letters.insert(0, (char) ('A' + (rest - 1) % 26));
        }
        return letters.toString();
    }

    @Override
    public String toString() {
        return PhraseBook.ENGLISH_METRIC.say(words());
    }
}
