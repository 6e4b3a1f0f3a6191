package io.github.weirwise.demo.desk;

import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.demo.tank.TrainingTank;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Free play with a unit of which everything is known: turn a knob, see and read what changes. Event thread only. */
public final class TryDesk implements TankTime {
    private final List<Runnable> listeners = new ArrayList<>();
    private TrainingTank tank;
    private History history = new History();
    private Settings before;
    private Optional<Lever> lever = Optional.empty();

    /** Play with a unit, set so that it gives what is wanted. */
    public TryDesk(SkimmerUnit unit) {
        choose(unit);
    }

    /** Starts afresh with another unit. */
    public void choose(SkimmerUnit unit) {
        tank = TrainingTank.onTarget(unit);
        history = new History();
        history.note(tank);
        before = tank.settings();
        lever = Optional.empty();
        changed();
    }

    /** Calls this after every change. */
    public void onChange(Runnable listener) {
        listeners.add(listener);
    }

    private void changed() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    public SkimmerUnit unit() {
        return tank.unit();
    }

    public Settings settings() {
        return tank.settings();
    }

    public TrainingTank tank() {
        return tank;
    }

    public List<History.Point> points() {
        return history.points();
    }

    /** The moment as a picture. */
    public Scene scene() {
        return Scene.of(unit(), tank.settings(), tank.skimmateMlPerDay(), tank.cupMl(), tank.cupPtCo());
    }

    /** Turns one lever; turns of the same lever one after another count as one change. */
    public void turn(Lever turned, UnaryOperator<Settings> to) {
        Settings next = to.apply(tank.settings());
        if (next.equals(tank.settings())) {
            return;
        }
        if (lever.isEmpty() || lever.get() != turned) {
            before = tank.settings();
        }
        lever = Optional.of(turned);
        tank.set(next);
        history.note(tank);
        changed();
    }

    /** Sets the weir. */
    public void moveWeir(double crestMm) {
        turn(Lever.WEIR, settings -> settings.withWeirCrestMm(unit().weir().clampMm(crestMm)));
    }

    /** What the last change does, in words; empty when nothing was changed yet. */
    public Optional<Phrase> whatChanged() {
        return lever.map(turned -> Change.of(unit(), turned, before, tank.settings()));
    }

    @Override
    public Instant now() {
        return tank.now();
    }

    @Override
    public Instant start() {
        return TrainingTank.START;
    }

    @Override
    public void run(Duration time) {
        history.run(tank, time);
        changed();
    }

    @Override
    public void runUntilSettled() {
        history.runUntilSettled(tank);
        changed();
    }

    @Override
    public boolean settled() {
        return tank.settled();
    }

    /** Empties the cup. */
    public void emptyCup() {
        tank.emptyCup();
        changed();
    }
}
