package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.chart.ChartCard;
import io.github.weirwise.demo.chart.StripData;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.EntryWords;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.demo.panel.Sheet;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;

/** What the trainee knows so far: readings on a strip of days, and the journal below it, newest first. */
final class LogPage extends JPanel implements PracticePage {
    private static final long serialVersionUID = 1L;
    private static final double HALF_BAND_MM = 4;

    private final ChartCard strip;
    private final Prose journal = new Prose();
    private transient Optional<Moment> shown = Optional.empty();
    private transient Dress dress;

    LogPage(Moment first, Dress dress) {
        super(new MigLayout("insets 0, fill, wrap 1, gapy 8", "[grow,fill]", "[grow 60,fill][grow 40,fill]"));
        this.dress = dress;
        setOpaque(false);
        strip = new ChartCard("record", data(first), dress);
        journal.setName("log.journal");
        JScrollPane scroll = Sheet.around(journal);
        scroll.setBorder(BorderFactory.createEmptyBorder(0, 8, 0, 0));
        add(strip, "grow, push, h 140:200:");
        add(scroll, "grow, push, h 80:120:");
        dress(dress);
    }

    private StripData data(Moment moment) {
        PracticeSession session = moment.session();
        double wanted = session.scenario().unit().target().submergenceMm();
        return new StripData(
                List.of(),
                session.journal().all(Reading.class).stream()
                        .map(StripData.Seen::of)
                        .toList(),
                session.journal().all(WeirMove.class).stream()
                        .map(move -> new StripData.Mark(
                                move.at(), dress.text("strip.weir", Quantity.of(move.toCrestMm(), Unit.MILLIMETRE))))
                        .toList(),
                Range.around(wanted, HALF_BAND_MM),
                session.scenario().unit().target().skimmateBandMlPerDay(),
                Optional.empty(),
                TankClock.of(session));
    }

    @Override
    public void show(Moment moment) {
        shown = Optional.of(moment);
        strip.show(data(moment));
        TankClock clock = new TankClock(moment.session());
        List<String> lines = new ArrayList<>();
        for (JournalEntry entry : moment.session().journal().entries()) {
            lines.add(0, dress.text("journal.line", clock.when(entry.at()), EntryWords.of(entry)));
        }
        journal.setText(String.join("\n", lines));
        journal.setCaretPosition(0);
    }

    @Override
    public void dress(Dress other) {
        dress = other;
        strip.dress(other);
        shown.ifPresent(this::show);
    }
}
