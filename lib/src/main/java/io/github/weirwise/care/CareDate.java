package io.github.weirwise.care;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Objects;

/**
 * A day on which a task is to be done.
 *
 * @param day the day
 * @param task the task
 * @since 0.1
 */
public record CareDate(LocalDate day, CareTask task) implements Comparable<CareDate> {
    private static final Comparator<CareDate> ORDER =
            Comparator.comparing(CareDate::day).thenComparing(CareDate::task);

    /** Rejects nulls. */
    public CareDate {
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(task, "task");
    }

    @Override
    public int compareTo(CareDate other) {
        return ORDER.compare(this, other);
    }
}
