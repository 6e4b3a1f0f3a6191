package io.github.weirwise.demo.desk;

import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.practice.FreePlay;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Range;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.WeirSetting;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Free play with a unit of which everything is known: turn a knob, see and read what changes. Event thread only. */
public final class TryDesk implements TankTime {
    /** Settled is told as within so much, up and down. */
    private static final double EXPECTED_WITHIN = 1.05;
    /** Who turns the same lever later than this changes something anew. */
    private static final Duration ONE_CHANGE = Duration.ofMinutes(30);

    private final List<Runnable> listeners = new ArrayList<>();
    private FreePlay play;
    /** The unit before the lever that is in hand was turned. */
    private FreePlay beforeTurn;
    /** The same, kept while time runs, so that the change can still be told. */
    private FreePlay toldFrom;

    private Instant lastTurn;
    private Instant start;
    private final Scenes scenes = new Scenes();
    private History history = new History();
    private Optional<Lever> lever = Optional.empty();

    /** Play with a unit, set so that it gives what is wanted. */
    public TryDesk(SkimmerUnit unit) {
        choose(unit);
    }

    /** Starts afresh with another unit. */
    public void choose(SkimmerUnit unit) {
        play = onTarget(unit);
        beforeTurn = play;
        toldFrom = play;
        lastTurn = play.now();
        start = play.now();
        history = new History();
        history.note(play);
        lever = Optional.empty();
        changed();
    }

    private static FreePlay onTarget(SkimmerUnit unit) {
        Settings rated = unit.ratedSettings(unit.weir().lowestCrestMm());
        double right = WeirSetting.crestForSkimmate(unit, rated, unit.target().skimmateMlPerDay())
                .orElseThrow();
        return FreePlay.still(unit, rated.withWeirCrestMm(Math.round(2 * right) / 2.0));
    }

    /** Calls this after every change. */
    public void onChange(Runnable listener) {
        listeners.add(listener);
    }

    private void changed() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    public SkimmerUnit unit() {
        return play.unit();
    }

    public Settings settings() {
        return play.settings();
    }

    /** The unit in its water. */
    public FreePlay tank() {
        return play;
    }

    @Override
    public List<History.Point> points() {
        return history.points();
    }

    /** The moment as a picture. */
    public Scene scene() {
        Scene scene = scenes.of(play, history.cup());
        double level = play.rest().submergenceMm();
        double amount = play.rest().skimmateMlPerDay();
        return settled()
                ? scene
                : scene.expecting(
                        new Range(level, level), new Range(amount / EXPECTED_WITHIN, amount * EXPECTED_WITHIN));
    }

    /** Turns one lever; turns of the same lever soon after one another count as one change. */
    public void turn(Lever turned, UnaryOperator<Settings> to) {
        Settings now = play.settings();
        Settings next = to.apply(now);
        if (next.equals(now)) {
            return;
        }
        if (lever.isEmpty() || lever.get() != turned || play.now().isAfter(lastTurn.plus(ONE_CHANGE))) {
            beforeTurn = play;
            toldFrom = play;
        }
        lever = Optional.of(turned);
        lastTurn = play.now();
        play = beforeTurn.set(settings -> next);
        history.note(play);
        changed();
    }

    /** Sets the weir. */
    public void moveWeir(double crestMm) {
        turn(Lever.WEIR, settings -> settings.withWeirCrestMm(unit().weir().clampMm(crestMm)));
    }

    /** How the unit was set before the knob in hand was turned. */
    public Settings turnedFrom() {
        return toldFrom.settings();
    }

    /** When the knob in hand was turned; empty before any was. */
    public Optional<Instant> turnedAt() {
        return lever.map(turned -> toldFrom.now());
    }

    /** What the last change does, in words; empty when nothing was changed yet. */
    public Optional<Phrase> whatChanged() {
        return lever.map(turned -> Change.of(turned, toldFrom, play));
    }

    /** What a technician would do now who has looked at everything. */
    public Phrase technician() {
        return Technician.of(play);
    }

    @Override
    public Instant now() {
        return play.now();
    }

    @Override
    public Instant start() {
        return start;
    }

    @Override
    public void run(Duration time) {
        play = history.run(play, time);
        beforeTurn = play;
        changed();
    }

    @Override
    public void runUntilSettled() {
        play = history.runUntilSettled(play);
        beforeTurn = play;
        changed();
    }

    @Override
    public boolean settled() {
        return play.settled();
    }

    /** Empties the cup. */
    public void emptyCup() {
        play = play.cupEmptied();
        beforeTurn = play;
        history.note(play);
        changed();
    }
}
