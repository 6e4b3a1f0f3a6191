package io.github.weirwise.care;

import io.github.weirwise.report.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * One task at one moment.
 *
 * @param task the task
 * @param interval how often it comes on this unit
 * @param lastDone when it was last done, if the journal tells
 * @param due when it is due
 * @param state how urgent that is
 * @since 0.1
 */
public record CareItem(CareTask task, CareInterval interval, Optional<Instant> lastDone, Instant due, CareState state) {
    private static final double SOON_SHARE = 0.1;
    private static final double LATE_SHARE = 0.25;
    private static final double DAY_MILLIS = 86_400_000;

    /** Rejects nulls. */
    public CareItem {
        Objects.requireNonNull(task, "task");
        Objects.requireNonNull(interval, "interval");
        Objects.requireNonNull(lastDone, "lastDone");
        Objects.requireNonNull(due, "due");
        Objects.requireNonNull(state, "state");
    }

    static CareItem of(CareInterval interval, Optional<Instant> lastDone, Instant begin, Instant now) {
        Instant due = lastDone.isEmpty() && interval.task().dueAtStart()
                ? begin
                : Times.later(lastDone.orElse(begin), duration(interval.days()));
        double lateDays = Times.days(due, now);
        return new CareItem(interval.task(), interval, lastDone, due, state(lateDays, interval.days()));
    }

    /** By how many days it is late at an instant; negative before it is due. */
    public double lateDays(Instant now) {
        return Times.days(due, now);
    }

    private static CareState state(double lateDays, double intervalDays) {
        if (lateDays >= Math.max(1, LATE_SHARE * intervalDays)) {
            return CareState.OVERDUE;
        }
        if (lateDays >= 0) {
            return CareState.DUE;
        }
        return -lateDays <= Math.max(1, SOON_SHARE * intervalDays) && intervalDays > 1
                ? CareState.SOON
                : CareState.FRESH;
    }

    static Duration duration(double days) {
        return Duration.ofMillis(Math.round(days * DAY_MILLIS));
    }
}
