package io.github.weirwise.demo.desk;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.advice.Step;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.demo.tank.Looker;
import io.github.weirwise.demo.tank.TrainingTank;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.skimmer.Condition;
import io.github.weirwise.skimmer.Settings;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The work on the invented tank: what is set, seen, noted and advised. Lives on one thread (the event thread in the
 * window); tells its listeners after every change.
 */
public final class Desk {
    private static final Duration PAST = Duration.ofHours(6);

    private final TrainingTank tank;
    private final Looker looker;
    private final TankHand hand;
    private final Settings told;
    private final List<Runnable> listeners = new ArrayList<>();
    private final History history = new History();
    private Journal journal = Journal.EMPTY;
    private Optional<Advice> advice = Optional.empty();
    private boolean stepTaken;

    /** The work on a tank, with scatter by a seed. */
    public Desk(TrainingTank tank, long seed) {
        this.tank = tank;
        this.looker = new Looker(seed);
        this.hand = new TankHand(tank, looker);
        this.told = tank.settings().withCondition(Condition.REFERENCE);
        history.note(tank);
    }

    /** Calls this after every change. */
    public void onChange(Runnable listener) {
        listeners.add(listener);
    }

    private void changed() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    public TrainingTank tank() {
        return tank;
    }

    public Journal journal() {
        return journal;
    }

    public Optional<Advice> advice() {
        return advice;
    }

    /** Whether the advice has been followed already. */
    public boolean stepTaken() {
        return stepTaken;
    }

    /** Settings when the journal began, with nothing known of load and faults. */
    public Settings told() {
        return told;
    }

    public Instant now() {
        return tank.now();
    }

    public History history() {
        return history;
    }

    /** The moment as a picture. */
    public Scene scene() {
        return Scene.of(tank.unit(), tank.settings(), tank.skimmateMlPerDay(), tank.cupMl(), tank.cupPtCo());
    }

    /** Sets the weir; moves without time between them count as one. */
    public void moveWeir(double crestMm) {
        if (tank.unit().weir().clampMm(crestMm) == tank.settings().weirCrestMm()) {
            return;
        }
        tank.setWeir(crestMm);
        note(new WeirMove(now(), tank.settings().weirCrestMm(), false));
    }

    /** Sets the flow. */
    public void setFlow(double litresPerHour) {
        if (litresPerHour != tank.settings().flowLitresPerHour()) {
            tank.set(tank.settings().withFlowLitresPerHour(litresPerHour));
            note(new SettingChange(now(), SettingChange.Knob.FLOW, litresPerHour));
        }
    }

    /** Sets the air. */
    public void setAir(double litresPerHour) {
        if (litresPerHour != tank.settings().airLitresPerHour()) {
            tank.set(tank.settings().withAirLitresPerHour(litresPerHour));
            note(new SettingChange(now(), SettingChange.Knob.AIR, litresPerHour));
        }
    }

    private void note(JournalEntry entry) {
        List<JournalEntry> kept = new ArrayList<>(journal.entries());
        kept.removeIf(old -> old.at().equals(entry.at()) && sameKnob(old, entry));
        kept.add(entry);
        journal = new Journal(kept);
        advice = Optional.empty();
        history.note(tank);
        changed();
    }

    private static boolean sameKnob(JournalEntry old, JournalEntry entry) {
        if (old instanceof SettingChange before && entry instanceof SettingChange after) {
            return before.what() == after.what();
        }
        return old instanceof WeirMove && entry instanceof WeirMove;
    }

    /** Looks at the unit and notes what is seen. */
    public Reading look() {
        return look(Looker.ROUND);
    }

    /** Looks at the named things and notes what is seen. */
    public Reading look(List<LookKind> kinds) {
        Reading reading = looker.read(tank, kinds);
        journal = journal.with(reading);
        advice = Optional.empty();
        changed();
        return reading;
    }

    /** Lets the time run. */
    public void run(Duration time) {
        Duration left = time;
        while (left.compareTo(Duration.ZERO) > 0) {
            Duration part = left.compareTo(History.SPACING) < 0 ? left : History.SPACING;
            tank.run(part);
            history.note(tank);
            left = left.minus(part);
        }
        changed();
    }

    /** Takes over advice that was worked out elsewhere. */
    public void advised(Advice given) {
        advice = Optional.of(given);
        stepTaken = false;
        changed();
    }

    /** Does what was advised; without advice nothing happens. */
    public void takeStep() {
        if (advice.isEmpty()) {
            return;
        }
        Advice taken = advice.get();
        for (JournalEntry entry : hand.take(taken)) {
            journal = journal.with(entry);
        }
        history.note(tank);
        advice = taken.step() instanceof Step.Look ? Optional.empty() : advice;
        stepTaken = true;
        changed();
    }

    /** Runs to the time at which the advice can be judged. */
    public void waitForAdvice() {
        advice.ifPresent(given -> {
            if (given.judgeAt().isAfter(now())) {
                run(Duration.between(now(), given.judgeAt()));
            }
        });
    }

    /** Lets a past day go by with its looks, so that there is something to see at the start. */
    public void liveThroughFirstDay() {
        run(PAST);
        look();
        run(Duration.ofHours(18));
        look();
    }
}
