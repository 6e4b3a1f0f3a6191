package io.github.weirwise.unit;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

/**
 * How a part goes bad; paces are stated judgement from common practice.
 *
 * @param kind the way
 * @param daysToWorst median days from clean to its worst, above 0; of no meaning unless it {@link Kind#GROWS}
 * @since 0.1
 */
public record Fouling(Kind kind, double daysToWorst) {
    private static final Limit DAYS_TO_WORST = Limit.of("daysToWorst", 1, 1e6, Unit.DAY, "unit.try.giveTheMedianDays");

    /** The way (common practice). */
    public enum Kind {
        /** A little every day since it was last cleaned; the pace differs between tanks by a factor of two either way. */
        GROWS,
        /** It is sound until something slips, blocks or breaks. */
        SUDDEN,
        /** It comes and goes by itself. */
        PASSES
    }

    /** Sound until something slips, blocks or breaks. */
    public static final Fouling SUDDEN = new Fouling(Kind.SUDDEN, 1e6);

    /** Comes and goes by itself. */
    public static final Fouling PASSES = new Fouling(Kind.PASSES, 1e6);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if the days are not 1 to 1e6
     */
    public Fouling {
        DAYS_TO_WORST.check(daysToWorst);
    }

    static Fouling over(double days) {
        return new Fouling(Kind.GROWS, days);
    }
}
