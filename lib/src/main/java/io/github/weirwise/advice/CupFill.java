package io.github.weirwise.advice;

import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.util.Optional;

/** How long the cup lasts at an expected amount. */
final class CupFill {
    /** Nobody looks for so long. */
    static final Duration NIGHT = Duration.ofHours(12);

    private static final double SECONDS_A_DAY = 86400;
    private static final double ML_A_DAY = 24000;
    /** Slower than this a cup is emptied in time anyway. */
    private static final double LONGEST_DAYS = 30;

    private final SkimmerUnit unit;

    CupFill(SkimmerUnit unit) {
        this.unit = unit;
    }

    /** What the cup's drain carries away, mL a day; 0 for a cup without one. */
    static double drainMlPerDay(SkimmerUnit unit) {
        return ML_A_DAY * unit.cupDrainLitresPerHour().orElse(0);
    }

    /** Until the most that is expected fills the empty cup and more than its drain takes comes; empty when it lasts. */
    Optional<Duration> fullIn(Expectation expectation) {
        return fullAt(expectation.skimmateMlPerDay().high());
    }

    /** Whether even the least that is expected fills the cup within a time. */
    boolean surelyWithin(Expectation expectation, Duration time) {
        return fullAt(expectation.skimmateMlPerDay().low())
                .filter(in -> in.compareTo(time) <= 0)
                .isPresent();
    }

    /** Until this amount fills the empty cup; empty when it lasts. */
    Optional<Duration> fullAt(double mlPerDay) {
        double excess = mlPerDay - drainMlPerDay(unit);
        double days = unit.cupMl() / excess;
        return excess > 0 && days < LONGEST_DAYS
                ? Optional.of(Duration.ofSeconds((long) Math.ceil(days * SECONDS_A_DAY)))
                : Optional.empty();
    }
}
