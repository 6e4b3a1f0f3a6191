package io.github.weirwise.advice;

import io.github.weirwise.unit.SkimmerUnit;

/** What the cup's drain carries away. */
final class CupDrain {
    private CupDrain() {}

    private static final double ML_A_DAY = 24000;

    /** mL a day; 0 for a cup without one. */
    static double mlPerDay(SkimmerUnit unit) {
        return ML_A_DAY * unit.cupDrainLitresPerHour().orElse(0);
    }
}
