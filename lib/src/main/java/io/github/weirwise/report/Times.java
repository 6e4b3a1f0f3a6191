package io.github.weirwise.report;

import java.time.Duration;
import java.time.Instant;

/**
 * Sums and differences of instants that stop at the ends of time instead of failing there; never throw.
 *
 * @since 0.1
 */
public final class Times {
    private static final double SECONDS_A_DAY = 86400;
    private static final double NANOS_A_DAY = SECONDS_A_DAY * 1e9;

    private Times() {}

    /** An instant and a while, or the end of time. */
    public static Instant later(Instant from, Duration wait) {
        boolean beyond = Duration.between(from, Instant.MAX).compareTo(wait) < 0;
        return beyond ? Instant.MAX : from.plus(wait);
    }

    /** A while before an instant, or the beginning of time. */
    public static Instant earlier(Instant from, Duration back) {
        boolean beyond = Duration.between(Instant.MIN, from).compareTo(back) < 0;
        return beyond ? Instant.MIN : from.minus(back);
    }

    /** Days from one instant to another, negative when the other lies before it. */
    public static double days(Instant from, Instant to) {
        Duration time = Duration.between(from, to);
        return time.getSeconds() / SECONDS_A_DAY + time.getNano() / NANOS_A_DAY;
    }
}
