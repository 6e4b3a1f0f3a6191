package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.desk.Cannot;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.Forecast;
import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.EntryWords;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Unit;
import java.util.List;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JScrollPane;

/** The journal, newest first, and the way to take the newest entry back. */
public final class JournalCard extends Card {
    private static final long serialVersionUID = 1L;
    private static final int MOST_SHOWN = 500;
    private static final float SMALL = 12f;

    private final transient Desk desk;
    private final DefaultListModel<String> lines = new DefaultListModel<>();
    private final WrapList<String> list = new WrapList<>(lines);
    private final JButton undo = new JButton();
    private transient List<JournalEntry> shown = List.of();
    private transient Dress dress;

    /** The journal of a desk. */
    public JournalCard(Desk desk, Dress dress) {
        super(dress.palette(), "[grow,fill]", "[grow,fill]");
        this.desk = desk;
        this.dress = dress;
        list.setName("journal");
        list.setVisibleRowCount(6);
        list.setCellRenderer(new WrappedLine());
        Buttons.set(undo, "undo", () -> desk.undo());
        beside(undo);
        JScrollPane scroll =
                new JScrollPane(list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        body().add(scroll, "grow, push, hmin 60");
        dress(dress);
    }

    /** Shows what is noted. */
    public void refresh() {
        undo.setEnabled(desk.canUndo());
        List<JournalEntry> entries = desk.journal().entries();
        if (entries.equals(shown)) {
            return;
        }
        shown = entries;
        lines.clear();
        Clock clock = desk.clock();
        int oldest = Math.max(0, entries.size() - MOST_SHOWN);
        for (int i = entries.size() - 1; i >= oldest; i--) {
            JournalEntry entry = entries.get(i);
            lines.addElement(dress.text("journal.line", clock.when(entry.at()), words(entry)));
        }
    }

    /** A note that the round wrote is told in words. */
    private static Phrase words(JournalEntry entry) {
        return Forecast.of(entry)
                .map(told -> Words.phrase(
                        "entry.expected",
                        QuantityRange.of(told.levelMm(), Unit.MILLIMETRE),
                        QuantityRange.of(told.mlPerDay(), Unit.MILLILITRE_PER_DAY)))
                .or(() -> Cannot.of(entry).map(look -> Words.phrase("entry.cannot", Phrase.of("advice.look." + look))))
                .orElseGet(() -> EntryWords.of(entry));
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        head(other.text("journal.title"));
        paper(other.palette());
        Buttons.name(undo, other, "journal.undo");
        list.setFont(list.getFont().deriveFont(SMALL));
        list.getAccessibleContext().setAccessibleName(other.text("journal.title"));
        shown = List.of();
        refresh();
    }
}
