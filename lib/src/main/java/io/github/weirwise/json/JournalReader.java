package io.github.weirwise.json;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Work;
import java.util.ArrayList;
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

    static JournalContents read(byte[] file, JournalReader reader) {
        JournalText.each(file, reader::take);
        return reader.contents();
    }

    private void take(JournalText.Line each) {
        Work.step();
        boolean first = !begun;
        begun = true;
        try {
            if (each.line().isHeader()) {
                takeHeader(each.line().header());
            } else {
                items.add(each.line().item());
            }
        } catch (DocumentException e) {
            headerProblem = first ? e : headerProblem;
            spoil(each, e.getMessage());
        }
    }

    private void takeHeader(JournalHeader found) {
        if (header != null && !header.equals(found)) {
            throw new DocumentException("$", Phrase.of("json.headerAnotherJournal"), Phrase.of("json.keepOneJournal"));
        }
        header = found;
    }

    private void spoil(JournalText.Line line, String problem) {
        spoiltCount++;
        if (spoilt.size() < MOST_SHOWN || !line.ended()) {
            spoilt.add(new SpoiltLine(line.number(), line.line().shown(), !line.ended(), problem));
        }
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
