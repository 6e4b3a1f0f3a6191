package io.github.weirwise.watch;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.WrongValueException;
import java.time.Duration;

/**
 * How a stream is condensed and when a person is called.
 *
 * @param window values within this time become one value of each kind, their median; 10 s to 1 day
 * @param readEvery a reading is written at least this often while values come; not under {@code window}
 * @param longestGap longest usual time between two values; a longer step of the clock must be confirmed by the next two
 *     values before it is believed; not under {@code window}
 * @param silentAfter a sensor that has said nothing for this long is reported once; not under {@code longestGap}
 * @param remindAfter the same step is asked for again after this long
 * @param fewestValues a window with fewer values of a kind waits for more of them in the next, 1 to 1000
 * @param leastGain a weir move or a service is worth a call if it raises the chance of being on target by this much, 0 to 1
 * @since 0.1
 */
public record WatchOptions(
        Duration window,
        Duration readEvery,
        Duration longestGap,
        Duration silentAfter,
        Duration remindAfter,
        int fewestValues,
        double leastGain) {
    private static final Limit WINDOW = Limit.of("window", 10, 86_400, Unit.SECOND, "watch.try.20MinutesSuitMost");
    private static final Limit FEWEST_VALUES =
            Limit.of("fewestValues", 1, 1000, Unit.PLAIN, "watch.try.3KeepSingleSpikes");
    private static final Limit LEAST_GAIN = Limit.of("leastGain", 0, 1, Unit.PLAIN, "watch.try.giveAChanceBetween");

    /** 20 min, 12 h, 2 h, 12 h, 24 h, 3 values, a gain of 0.1. */
    public static final WatchOptions DEFAULT = new WatchOptions(
            Duration.ofMinutes(20),
            Duration.ofHours(12),
            Duration.ofHours(2),
            Duration.ofHours(12),
            Duration.ofHours(24),
            3,
            0.1);

    /** Checks the ranges. */
    public WatchOptions {
        WINDOW.check(window.toSeconds());
        atLeast("readEvery", readEvery, window);
        atLeast("longestGap", longestGap, window);
        atLeast("silentAfter", silentAfter, longestGap);
        atLeast("remindAfter", remindAfter, Duration.ZERO);
        FEWEST_VALUES.check(fewestValues);
        LEAST_GAIN.check(leastGain);
    }

    private static Quantity minutes(Duration time) {
        return Quantity.of(time.toSeconds() / 60.0, Unit.MINUTE);
    }

    private static void atLeast(String name, Duration value, Duration least) {
        if (value.compareTo(least) < 0) {
            throw new WrongValueException(
                    name,
                    Phrase.of("watch.tooShort", name, minutes(value), minutes(least)),
                    Phrase.of("watch.try.giveLonger"));
        }
    }
}
