package io.github.weirwise.json;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Work;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Takes in a journal file line by line. A header that cannot be read is made good by its copy; of lines that cannot be read
 * all are counted, the first thousand and a torn last one are shown.
 */
final class JournalReader {
    private static final int MOST_SHOWN = 1000;

    private final List<JournalItem> items = new ArrayList<>();
    private final List<SpoiltLine> spoilt = new ArrayList<>();
    private JournalHeader header;
    private DocumentException headerProblem;
    private int spoiltCount;
    private boolean begun;

    JournalReader() {}

    /** With a header from elsewhere, for a file that has lost its own. */
    JournalReader(JournalHeader header) {
        this.header = header;
    }

    /** Takes in the file's lines one at a time; blank ones are passed over. */
    JournalContents read(byte[] file) {
        int start = 0;
        int number = 1;
        for (int i = 0; i <= file.length; i++) {
            boolean end = i == file.length;
            if (end || file[i] == '\n') {
                JournalLine line = new JournalLine(Arrays.copyOfRange(file, start, i));
                if (!line.isBlank()) {
                    take(number, line, !end);
                }
                start = i + 1;
                number++;
            }
        }
        return contents();
    }

    private void take(int number, JournalLine line, boolean ended) {
        Work.step();
        boolean first = !begun;
        begun = true;
        try {
            if (line.isHeader()) {
                takeHeader(line.header());
            } else {
                items.add(line.item());
            }
        } catch (DocumentException e) {
            headerProblem = first ? e : headerProblem;
            spoiltCount++;
            if (spoilt.size() < MOST_SHOWN || !ended) {
                spoilt.add(new SpoiltLine(number, line.shown(), !ended, e.getMessage()));
            }
        }
    }

    private void takeHeader(JournalHeader found) {
        if (header != null && !header.equals(found)) {
            throw new DocumentException("$", Phrase.of("json.headerAnotherJournal"), Phrase.of("json.keepOneJournal"));
        }
        header = found;
    }

    private JournalContents contents() {
        if (!begun) {
            throw new DocumentException(
                    "line 1, $", Phrase.of("json.fileEmpty"), Phrase.of("json.beginJournalJournalfile"));
        }
        if (header == null) {
            throw headerProblem == null
                    ? new DocumentException(
                            "line 1, $", Phrase.of("json.fileHeader"), Phrase.of("json.readJournalfileSalvage"))
                    : headerProblem.inLine(1);
        }
        Journal journal = new Journal(JournalItem.once(items));
        return new JournalContents(header.unit(), header.settings(), journal, spoilt, spoiltCount);
    }
}
