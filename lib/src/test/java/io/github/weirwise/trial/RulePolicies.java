package io.github.weirwise.trial;

import io.github.weirwise.advice.HoldReason;
import io.github.weirwise.advice.Step;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;

/** The rivals: simple rules of thumb on amount and level. */
final class RulePolicies {
    private static final double FIXED_STEP_MM = 3;
    private static final double FIRST_HALVING_STEP_MM = 8;
    private static final double LEAST_STEP_MM = 1;
    private static final double BISECTION_REACH_MM = 12;

    private RulePolicies() {}

    static Policy doNothing() {
        return (unit, start, journal, now) -> Decision.hold(now, HoldReason.WITHIN_NOISE);
    }

    /** "Raise if dry, lower if wet" by a fixed step; the impatient one looks again after a few hours and acts at once. */
    static Policy fixedStep(double patienceHours) {
        return (unit, start, journal, now) -> {
            Seen seen = new Seen(unit, start, journal, now);
            int way = way(seen, patienceHours);
            double to = unit.weir().clampMm(seen.markMm() + way * FIXED_STEP_MM);
            if (to == seen.markMm()) {
                Duration again = Duration.ofMinutes((long) (60 * Math.min(24, patienceHours)));
                return Decision.of(new Step.Hold(now.plus(again), HoldReason.WITHIN_NOISE));
            }
            return Decision.move(seen.markMm(), to);
        };
    }

    private static int way(Seen seen, double patienceHours) {
        if (seen.hoursSinceChange() < patienceHours) {
            return 0;
        }
        OptionalDouble amount = seen.amount(Math.min(patienceHours, 12));
        return amount.isPresent() ? Seen.wantedWay(amount.getAsDouble()) : 0;
    }

    /** A large first step, half as large each time. */
    static Policy halvingSteps() {
        return new Policy() {
            private double stepMm = FIRST_HALVING_STEP_MM;

            @Override
            public Decision next(SkimmerUnit unit, Settings start, Journal journal, Instant now) {
                Seen seen = new Seen(unit, start, journal, now);
                double to = unit.weir().clampMm(seen.markMm() + way(seen, 24) * stepMm);
                if (to == seen.markMm()) {
                    return Decision.hold(now, HoldReason.WITHIN_NOISE);
                }
                stepMm = Math.max(LEAST_STEP_MM, stepMm / 2);
                return Decision.move(seen.markMm(), to);
            }
        };
    }

    /** First the level of the data sheet, then bisection between a dry and a wet mark. */
    static Policy bisection() {
        return new Policy() {
            private double low = Double.NaN;
            private double high;

            @Override
            public Decision next(SkimmerUnit unit, Settings start, Journal journal, Instant now) {
                Seen seen = new Seen(unit, start, journal, now);
                double mark = seen.markMm();
                int way = way(seen, 24);
                if (way == 0) {
                    return Decision.hold(now, HoldReason.WITHIN_NOISE);
                }
                double to;
                if (Double.isNaN(low)) {
                    double off = unit.target().submergenceMm() - seen.levelMm().orElse(0);
                    to = unit.weir().clampMm(Math.rint(mark + Math.max(-40, Math.min(40, off))));
                    low = to - BISECTION_REACH_MM;
                    high = to + BISECTION_REACH_MM;
                } else {
                    low = way > 0 ? mark : low;
                    high = way < 0 ? mark : high;
                    to = unit.weir().clampMm(Math.rint(low + high) / 2);
                }
                return to == mark ? Decision.hold(now, HoldReason.WITHIN_NOISE) : Decision.move(mark, to);
            }
        };
    }

    /** Moves at random every third day or so. */
    static Policy random(RandomGenerator random) {
        return (unit, start, journal, now) -> {
            Seen seen = new Seen(unit, start, journal, now);
            double to = unit.weir().clampMm(seen.markMm() + Math.rint(Dice.between(random, -6, 6)));
            return random.nextDouble() < 0.3 && to != seen.markMm()
                    ? Decision.move(seen.markMm(), to)
                    : Decision.hold(now, HoldReason.WITHIN_NOISE);
        };
    }
}
