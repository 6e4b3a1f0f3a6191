package io.github.weirwise.demo.text;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Step;
import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.desk.TankHand;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.tank.Looker;
import io.github.weirwise.demo.tank.TrainingTank;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.FoamState;
import io.github.weirwise.unit.Settings;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;

/**
 * The whole job on the invented tank: read, ask, do the one step, wait, read again, until the tank is on target. The clock
 * is virtual and the scatter seeded, so every run prints the same.
 */
public final class TuningRun {
    /** How much too low the weir stands at the start, mm. */
    public static final double TOO_LOW_MM = 12;

    /** How much there really is to skim; nobody is told. */
    public static final double HIDDEN_SKIMMABLE_MG_PER_LITRE = 2.6;

    private static final long SEED = 20260302;
    private static final int MOST_ROUNDS = 12;
    private static final Duration FIRST_DAY = Duration.ofHours(24);

    private final TrainingTank tank = TrainingTank.tooLow(TOO_LOW_MM, HIDDEN_SKIMMABLE_MG_PER_LITRE);
    private final Looker looker = new Looker(SEED);
    private final TankHand hand = new TankHand(tank, looker);
    private final Adviser adviser;
    private final RunPrinter printer;
    private Journal journal = Journal.EMPTY;

    /** A run that asks this adviser and tells what happens line by line. */
    public TuningRun(Adviser adviser, Words words, Consumer<String> out) {
        this.adviser = adviser;
        this.printer = new RunPrinter(words, out);
    }

    /** What came out of a run. */
    public record Outcome(int changes, boolean onTarget, double submergenceMm, double skimmateMlPerDay) {
        /** The line for programs. */
        public String line() {
            return String.format(
                    java.util.Locale.ROOT,
                    "result: changes=%d onTarget=%d submergenceMm=%.1f skimmateMlPerDay=%.0f",
                    changes,
                    onTarget ? 1 : 0,
                    submergenceMm,
                    skimmateMlPerDay);
        }
    }

    /** Runs to the end and prints the line for programs last. */
    public Outcome run() {
        Settings told = tank.settings().withCondition(Condition.REFERENCE);
        printer.start(tank);
        tank.run(FIRST_DAY);
        look();
        int changes = 0;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Advice advice = adviser.advise(tank.unit(), told, journal, tank.now());
            printer.advice(tank.now(), advice);
            if (isFinished(advice)) {
                break;
            }
            changes += advice.step() instanceof Step.MoveWeir ? 1 : 0;
            List.copyOf(hand.take(advice)).forEach(entry -> journal = journal.with(entry));
            if (!(advice.step() instanceof Step.Look)) {
                waitFor(advice);
                look();
            } else {
                printer.seen(tank.now(), journal.last(Reading.class).orElseThrow());
            }
        }
        Outcome outcome = new Outcome(
                changes,
                tank.rest().foamState() == FoamState.ON_TARGET && flowsOnTarget(),
                tank.rest().submergenceMm(),
                tank.skimmateMlPerDay());
        printer.end(outcome);
        return outcome;
    }

    private boolean flowsOnTarget() {
        return tank.unit().target().skimmateBandMlPerDay().contains(tank.skimmateMlPerDay());
    }

    /** "Leave it alone, it is where it should be" ends the job. */
    private static boolean isFinished(Advice advice) {
        return advice.step() instanceof Step.Hold hold
                && hold.reason() == io.github.weirwise.advice.HoldReason.ON_TARGET;
    }

    private void look() {
        Reading reading = looker.read(tank, Looker.ROUND);
        journal = journal.with(reading);
        printer.seen(tank.now(), reading);
    }

    /** The flood look is taken on the way; the verdict waits for the judging time. */
    private void waitFor(Advice advice) {
        advice.floodLookAt().ifPresent(at -> {
            runTo(at);
            Reading early = looker.read(tank, List.of(io.github.weirwise.advice.LookKind.FOAM_LOOK));
            journal = journal.with(early);
            printer.seen(tank.now(), early);
        });
        runTo(advice.judgeAt());
    }

    private void runTo(Instant at) {
        if (at.isAfter(tank.now())) {
            tank.run(Duration.between(tank.now(), at));
        }
    }
}
