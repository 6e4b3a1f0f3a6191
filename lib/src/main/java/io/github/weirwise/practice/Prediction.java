package io.github.weirwise.practice;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import java.util.Objects;

/**
 * What a trainee expects of an act, said before it: where the level goes, whether the foam gets drier or wetter, by how
 * much, and how sure they are of the foam.
 *
 * @param level level in the column
 * @param foam drier, the same, wetter
 * @param times how many times more or less skimmate a day, 1 (no change) to 50; always 1 or more, {@code foam} tells the way
 * @param sure chance that {@code foam} is right, a third (a guess among three) to 1
 */
public record Prediction(Trend level, Trend foam, double times, double sure) {
    private static final Limit TIMES = Limit.of("times", 1, 50, Unit.PLAIN, "practice.try.sayHowManyTimes");
    private static final Limit SURE = Limit.of("sure", 0.33, 1, Unit.PLAIN, "practice.try.aThirdIsA");

    /** A guess among three. */
    public static final double LEAST_SURE = 1.0 / 3;

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a number is out of its range
     */
    public Prediction {
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(foam, "foam");
        TIMES.check(times);
        SURE.check(sure);
    }

    /** The expected amount against the present one: over 1 for wetter, under 1 for drier. */
    public double factor() {
        return switch (foam) {
            case LESS -> 1 / times;
            case SAME -> 1;
            case MORE -> times;
        };
    }
}
