package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.chart.ChartCard;
import io.github.weirwise.demo.chart.LaneData;
import io.github.weirwise.demo.chart.LaneDrawing;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.ListPage;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.practice.Debrief;
import io.github.weirwise.practice.Lane;
import io.github.weirwise.sheet.DebriefSheet;
import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The debrief: the trainee's own words first; then the courses side by side, and each decision to carry on from. */
final class DebriefPage extends JPanel implements PracticePage {
    private static final long serialVersionUID = 1L;
    private static final double DAY = 24;

    private final transient PracticeDesk desk;
    private final transient Saving saving;
    private final OwnWords own;
    private transient Optional<Debrief> debrief = Optional.empty();
    private transient Optional<Told> told = Optional.empty();
    private transient Dress dress;

    DebriefPage(PracticeDesk desk, Saving saving, Dress dress) {
        super(new BorderLayout());
        this.desk = desk;
        this.saving = saving;
        this.dress = dress;
        setOpaque(false);
        own = new OwnWords(this::make, dress);
        add(own);
    }

    private void make() {
        own.offer(false);
        desk.debrief(made -> {
            debrief = Optional.of(made);
            tell();
        });
    }

    private void tell() {
        removeAll();
        told = debrief.map(made -> new Told(made, dress));
        told.ifPresent(this::add);
        revalidate();
        repaint();
    }

    /** A debrief holds for the moment it was made for. */
    @Override
    public void show(Moment moment) {
        boolean stale =
                debrief.filter(made -> made.session() != moment.session()).isPresent();
        if (stale) {
            debrief = Optional.empty();
            told = Optional.empty();
            removeAll();
            add(own);
            revalidate();
            repaint();
        }
        own.offer(true);
    }

    @Override
    public void dress(Dress other) {
        dress = other;
        own.dress(other);
        if (debrief.isPresent()) {
            tell();
        }
    }

    /** The debrief itself. */
    private final class Told extends JPanel {
        private static final long serialVersionUID = 1L;

        Told(Debrief made, Dress dress) {
            super(new MigLayout("insets 0, fill, wrap 1, gapy 8", "[grow,fill]", "[grow 45,fill][grow 55,fill]"));
            setOpaque(false);
            ChartCard lanes = new ChartCard("lanes", new LaneDrawing(data(made)), dress);
            add(lanes, "grow, push, h 190:210:");
            add(new Lines(made, dress), "grow, push");
        }
    }

    private static LaneData data(Debrief made) {
        double arrival = made.session().scenario().start().arrivesAtHour();
        return new LaneData(
                made.lanes().stream().map(lane -> lane(lane, arrival)).toList(),
                made.session().scenario().unit().target().skimmateBandMlPerDay());
    }

    private static LaneData.Lane lane(Lane lane, double arrival) {
        return new LaneData.Lane(
                lane.who(),
                lane.track().stream()
                        .map(point -> new LaneData.Point(
                                (point.hours() - arrival) / DAY, point.submergenceMm(), point.skimmateMlPerDay()))
                        .toList());
    }

    /** Its lines; from a decision one can carry on. */
    private final class Lines extends ListPage {
        private static final long serialVersionUID = 1L;

        Lines(Debrief made, Dress dress) {
            super("debrief", dress);
            DebriefRows rows = new DebriefRows(made, dress);
            JButton carryOn = new JButton();
            carryOn.setName("debrief.carryOn");
            carryOn.addActionListener(
                    e -> picked().flatMap(rows::decision).ifPresent(decision -> desk.rewindTo(decision.steps())));
            Buttons.name(carryOn, dress, "debrief.carryOn");
            put(carryOn);
            JButton save = new JButton();
            save.setName("debrief.save");
            save.addActionListener(e -> saving.save(
                    "debrief.html", () -> new DebriefSheet(dress.words().book()).of(made)));
            Buttons.name(save, dress, "debrief.save");
            put(save);
            onPick(() -> carryOn.setEnabled(picked().flatMap(rows::decision).isPresent()));
            dress(dress.text("debrief.title"), dress);
            show(dress.text(made.outcome().solved() ? "debrief.solved" : "debrief.notSolved"), rows.rows());
        }
    }
}
