package io.github.weirwise.lab;

import io.github.weirwise.lab.truth.Classic;
import io.github.weirwise.lab.truth.FullColumn;
import io.github.weirwise.lab.truth.Gentle;
import io.github.weirwise.lab.truth.ResponseLaw;
import io.github.weirwise.lab.truth.Slow;
import io.github.weirwise.lab.truth.Steep;
import io.github.weirwise.lab.truth.Top;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.Locale;
import java.util.random.RandomGenerator;

/** The families of the panel, and how each is played. */
public enum Truth {
    /** The first trial's. */
    CLASSIC(14, 1, Classic::new),
    /** Lives narrowly spread. */
    STEEP(14, 1, Steep::new),
    /** Close to log-linear. */
    GENTLE(14, 1, Gentle::new),
    /** Gas leaves only at the foam's top. */
    TOP(14, 1, Top::new),
    /** The full foam column, tabulated. */
    COLUMN(14, 1, FullColumn::new),
    /** Ninety days of slow fouling, a reading every second day. */
    SLOW(90, 2, Slow::new);

    /** Draws a unit of the family around a data sheet. */
    @FunctionalInterface
    private interface Draw {
        ResponseLaw of(SkimmerUnit sheet, RandomGenerator dice);
    }

    private final int days;
    private final int everyDays;
    private final Draw draw;

    Truth(int days, int everyDays, Draw draw) {
        this.days = days;
        this.everyDays = everyDays;
        this.draw = draw;
    }

    /** Length of a play. */
    int days() {
        return days;
    }

    /** Planned visits are so many days apart. */
    int everyDays() {
        return everyDays;
    }

    /** Whether parts foul over weeks instead of failing at the start. */
    boolean isLong() {
        return days > 30;
    }

    ResponseLaw draw(SkimmerUnit sheet, RandomGenerator dice) {
        return draw.of(sheet, dice);
    }

    /** The name on the command line. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The family of a name. */
    static Truth named(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
