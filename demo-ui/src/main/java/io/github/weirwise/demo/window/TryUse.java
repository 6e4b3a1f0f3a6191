package io.github.weirwise.demo.window;

import io.github.weirwise.demo.chart.ChartCard;
import io.github.weirwise.demo.chart.ResponseData;
import io.github.weirwise.demo.chart.StripData;
import io.github.weirwise.demo.chart.Sweep;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.LessonRun;
import io.github.weirwise.demo.desk.TankTime;
import io.github.weirwise.demo.desk.TryDesk;
import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Pieces.Piece;
import io.github.weirwise.demo.panel.TryCard;
import io.github.weirwise.demo.panel.TryKnobs;
import io.github.weirwise.demo.panel.UnitChoice;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Free play: every knob, what it changes, and the unit's answer to the weir as a chart. */
final class TryUse extends UseOfPieces {
    private static final Duration FORESEEN = Duration.ofDays(1);

    private final TryDesk desk;
    private final LessonRun lesson;
    private final Sweep sweep = new Sweep();
    private TryKnobs knobs;

    TryUse(TryDesk desk, Background background, Dress dress) {
        super("use.try", "[][][grow 60,fill][grow 40,fill]", background, dress);
        this.desk = desk;
        // It hears of a change before the screen does, so that the screen tells the next step at once.
        lesson = new LessonRun(desk);
        knobs = new TryKnobs(desk, dress);
        controls().add(knobs);
        knobs.steps().forEach(pieces()::also);
        pieces().add(() -> new Piece(() -> knobs.refresh(), other -> knobs.dress(other)));
        pieces().add(this::units);
        pieces().add(this::change);
        pieces().add(this::response);
        pieces().add(this::strip);
        desk.onChange(this::refresh);
    }

    private Piece units() {
        UnitChoice units = new UnitChoice(this::choose, dress());
        panel().add(units);
        return Piece.still(units::dress);
    }

    private Piece change() {
        TryCard change = new TryCard(desk, lesson, dress());
        panel().add(change, "hmin pref");
        return new Piece(change::refresh, change::dress);
    }

    private Piece response() {
        ChartCard response = new ChartCard("response", responseDrawing(), dress());
        panel().add(response, "grow, push, h 120:200:");
        return new Piece(() -> response.show(responseDrawing()), response::dress);
    }

    private Piece strip() {
        ChartCard strip = new ChartCard("strip", stripDrawing(), dress());
        panel().add(strip, "grow, push, h 120:200:");
        return new Piece(() -> strip.show(stripDrawing()), strip::dress);
    }

    private void choose(SkimmerUnit unit) {
        desk.choose(unit);
        // Knobs have the travel of their unit.
        controls().removeAll();
        knobs = new TryKnobs(desk, dress());
        knobs.steps().forEach(Runnable::run);
        controls().add(knobs);
        controls().revalidate();
        refresh();
    }

    private ResponseData responseDrawing() {
        return sweep.of(
                desk.unit(),
                desk.turnedFrom(),
                desk.settings(),
                desk.tank().rest(),
                desk.scene().skimmateMlPerDay());
    }

    private StripData stripDrawing() {
        return new StripData(
                desk.points(),
                List.of(),
                List.of(),
                desk.scene().bandMm(),
                desk.unit().target().skimmateBandMlPerDay(),
                desk.turnedAt()
                        .map(at -> at.plus(FORESEEN))
                        .filter(at -> at.isAfter(desk.now()))
                        .flatMap(at -> desk.scene()
                                .expected()
                                .map(each -> new StripData.Expected(at, each.levelMm(), each.mlPerDay()))),
                Clock.invented(desk.start()));
    }

    @Override
    public Scene scene() {
        return desk.scene();
    }

    @Override
    public void moveWeir(double crestMm) {
        desk.moveWeir(crestMm);
    }

    @Override
    public Optional<TankTime> time() {
        return Optional.of(desk);
    }

    @Override
    public String title(Dress other) {
        return desk.unit().name();
    }

    @Override
    public void onChange(Runnable listener) {
        desk.onChange(listener);
    }
}
