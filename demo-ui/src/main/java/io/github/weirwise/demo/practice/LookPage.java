package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.ListPage;
import io.github.weirwise.demo.panel.Row;
import io.github.weirwise.diagnosis.ObservationWords;
import io.github.weirwise.practice.Look;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JButton;

/** What can be looked at, each with its minutes; below it what was seen last. Looks cost time and give evidence, no answers. */
final class LookPage extends ListPage implements PracticePage {
    private static final long serialVersionUID = 1L;

    private final JButton round;
    private transient List<Look> offered = List.of();

    LookPage(PracticeDesk desk, Dress dress) {
        super("look", dress);
        round = button("look.round", () -> desk.perform(new SessionStep.LookAt(Look.ROUND)));
        put(round);
        put(button(
                "look.look",
                () -> picked().ifPresent(index -> desk.perform(new SessionStep.LookAt(offered.get(index))))));
        dress(dress);
    }

    @Override
    public void show(Moment moment) {
        PracticeSession session = moment.session();
        offered = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        for (Look each : Look.values()) {
            if (session.scenario().offers().has(each)) {
                offered.add(each);
                double minutes = session.scenario().offers().minutes(each);
                rows.add(new Row(
                        dress().words().say(minutes, Unit.MINUTE),
                        Row.Mark.GOOD,
                        dress().words().say(each.words()),
                        dress().text("look.takes", Quantity.of(minutes, Unit.MINUTE)) + "\n" + seen(session)));
            }
        }
        round.setEnabled(offered.contains(Look.ROUND));
        show(newest(session, dress()), rows);
    }

    /** What was read last, in one sentence. */
    static String newest(PracticeSession session, Dress dress) {
        return session.lastReading()
                .map(reading -> dress.text(
                        "look.newest",
                        new TankClock(session).when(reading.at()),
                        reading.observations().stream()
                                .map(ObservationWords::of)
                                .map(dress.words()::say)
                                .collect(Collectors.joining("; "))))
                .orElseGet(() -> dress.text("look.none"));
    }

    /** Every kind of thing seen so far, with its newest reading. */
    private String seen(PracticeSession session) {
        List<Class<?>> told = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        List<Reading> readings = session.journal().all(Reading.class);
        for (int i = readings.size() - 1; i >= 0; i--) {
            for (Observation each : readings.get(i).observations()) {
                boolean inspection = each instanceof Observation.Inspection;
                if (inspection || !told.contains(each.getClass())) {
                    told.add(each.getClass());
                    lines.add(dress().text(
                                    "journal.line",
                                    new TankClock(session).when(readings.get(i).at()),
                                    ObservationWords.of(each)));
                }
            }
        }
        return lines.stream().distinct().limit(20).collect(Collectors.joining("\n"));
    }

    @Override
    public void dress(Dress other) {
        dress(other.text("look.title"), other);
    }
}
