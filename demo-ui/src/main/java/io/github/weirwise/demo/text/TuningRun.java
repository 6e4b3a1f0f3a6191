package io.github.weirwise.demo.text;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.HoldReason;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.advice.Step;
import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.desk.InventedTank;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.unit.FoamState;
import io.github.weirwise.unit.OperatingPoint;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;

/**
 * The whole job on the invented tank: read, ask, do the one step, wait, read again, until the tank is on target. The clock
 * is virtual and the scatter seeded, so every run prints the same.
 */
public final class TuningRun {
    private static final int SEED = 20260302;
    private static final int MOST_ROUNDS = 12;
    private static final Duration FIRST_DAY = Duration.ofHours(24);

    private final TankDesk tank = new TankDesk(InventedTank.of(SEED));
    private final Adviser adviser;
    private final RunPrinter printer;

    /** A run that asks this adviser and tells what happens line by line. */
    public TuningRun(Adviser adviser, Words words, Consumer<String> out) {
        this.adviser = adviser;
        this.printer = new RunPrinter(tank.clock(), words, out);
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
        printer.start(tank);
        tank.run(FIRST_DAY);
        printer.seen(tank.now(), tank.look());
        int changes = 0;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Advice advice = adviser.advise(tank.unit(), tank.told(), tank.journal(), tank.now());
            printer.advice(tank.now(), advice);
            if (isFinished(advice)) {
                break;
            }
            changes += advice.step() instanceof Step.MoveWeir ? 1 : 0;
            tank.advised(advice);
            tank.takeStep();
            if (advice.step() instanceof Step.Look) {
                printer.seen(tank.now(), tank.journal().last(Reading.class).orElseThrow());
            } else {
                waitFor(advice);
            }
        }
        OperatingPoint rest = tank.tank().rest();
        double skimmate = tank.tank().truth().of(Stock.SKIMMATE_ML_PER_DAY);
        boolean flowsOnTarget = tank.unit().target().skimmateBandMlPerDay().contains(skimmate);
        Outcome outcome = new Outcome(
                changes, rest.foamState() == FoamState.ON_TARGET && flowsOnTarget, rest.submergenceMm(), skimmate);
        printer.end(outcome);
        return outcome;
    }

    /** "Leave it alone, it is where it should be" ends the job. */
    private static boolean isFinished(Advice advice) {
        return advice.step() instanceof Step.Hold hold && hold.reason() == HoldReason.ON_TARGET;
    }

    /** The flood look is taken on the way; the verdict waits for the judging time. */
    private void waitFor(Advice advice) {
        advice.floodLookAt().ifPresent(at -> {
            runTo(at);
            printer.seen(tank.now(), tank.look(List.of(LookKind.FOAM_LOOK)));
        });
        runTo(advice.judgeAt());
        printer.seen(tank.now(), tank.look());
    }

    private void runTo(Instant at) {
        if (at.isAfter(tank.now())) {
            tank.run(Duration.between(tank.now(), at));
        }
    }
}
