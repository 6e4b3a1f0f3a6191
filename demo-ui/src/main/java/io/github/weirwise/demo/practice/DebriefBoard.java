package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.chart.ChartCard;
import io.github.weirwise.demo.chart.LaneDrawing;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.ListPage;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.panel.Stack;
import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.practice.Debrief;
import io.github.weirwise.sheet.DebriefSheet;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** The debrief in the whole window: five sentences and three lanes here, the replay in the picture; everything else on request. */
final class DebriefBoard extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Debrief debrief;
    private final transient PracticeDesk desk;
    private final ChartCard chart;

    DebriefBoard(Debrief debrief, PracticeDesk desk, Saving saving, Runnable back, Dress dress) {
        super(new MigLayout("insets 0, fill, wrap 1, gapy 8", "[grow,fill]", "[][grow,fill]"));
        this.debrief = debrief;
        this.desk = desk;
        setOpaque(false);
        chart = new ChartCard(
                "lanes",
                new LaneDrawing(debrief, debrief.session().scenario().start().arrivesAtHour()),
                dress);
        Stack below = new Stack();
        Everything all = new Everything(dress);
        add(new InShort(saving, back, more -> below.hold(more ? all : chart), dress), "growx, hmin pref");
        below.keep(all);
        below.hold(chart);
        add(below, "grow, push, wmin 0, hmin 0");
    }

    /** Shows in the chart where the replay stands. */
    void replayAt(double hours) {
        chart.show(new LaneDrawing(debrief, hours));
    }

    /** The five sentences, and what can be kept of the debrief. */
    private final class InShort extends Card {
        private static final long serialVersionUID = 1L;

        InShort(Saving saving, Runnable back, Consumer<Boolean> turn, Dress dress) {
            super(dress.palette(), "[grow,fill]", "");
            Prose text = new Prose();
            text.setName("debrief.short");
            List<String> said =
                    debrief.inShort().stream().map(dress.words()::say).toList();
            text.setText(IntStream.range(0, said.size())
                    .mapToObj(i -> (i + 1) + ". " + said.get(i))
                    .collect(Collectors.joining("\n")));
            body().add(text, "growx, wrap");
            JPanel deeds = new JPanel(new MigLayout("insets 0, gapx 6"));
            deeds.setOpaque(false);
            JToggleButton more = new JToggleButton();
            deeds.add(button("debrief.back", back));
            deeds.add(worded(more, "debrief.more", () -> turn.accept(more.isSelected())));
            deeds.add(button(
                    "debrief.save",
                    () -> saving.save(
                            "debrief.html", () -> new DebriefSheet(dress.words().book()).of(debrief))));
            deeds.add(button(
                    "debrief.keep",
                    () -> saving.save(
                            "session.json",
                            () -> ScenarioJson.writeSession(debrief.session().toRecord()))));
            body().add(deeds);
            dress(dress.text("debrief.title"), dress);
        }
    }

    /** Goals, decisions, habits, predictions, views and questions, line by line. */
    private final class Everything extends ListPage {
        private static final long serialVersionUID = 1L;

        Everything(Dress dress) {
            super("debrief", dress);
            DebriefRows rows = new DebriefRows(debrief, dress);
            JButton carryOn = button(
                    "debrief.carryOn",
                    () -> picked().flatMap(rows::decision).ifPresent(decision -> desk.rewindTo(decision.steps())));
            put(carryOn);
            onPick(() -> carryOn.setEnabled(picked().flatMap(rows::decision).isPresent()));
            dress(dress.text("debrief.all"), dress);
            show(dress.text(debrief.outcome().solved() ? "debrief.solved" : "debrief.notSolved"), rows.rows());
        }
    }
}
