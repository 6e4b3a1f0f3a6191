package io.github.weirwise.advice;

import io.github.weirwise.unit.SkimmerUnit;

/** What the cup's drain carries away. */
final class CupDrain {
    private CupDrain() {}

    /** mL a day; 0 for a cup without one. */
    static double mlPerDay(SkimmerUnit unit) {
        return 0;
    }
}
