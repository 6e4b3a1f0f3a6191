package io.github.weirwise.report;

/**
 * A time on the clock of practice or of an invented tank, which has days and no dates: {@code day 3, 08:00}.
 *
 * @param hours hours since the midnight with which day 1 begins
 * @since 0.2
 */
public record PracticeTime(double hours) {
    /**
     * @throws IllegalArgumentException if {@code hours} is not finite
     */
    public PracticeTime {
        if (!Double.isFinite(hours)) {
            throw new IllegalArgumentException("a time of practice must be finite, got " + hours);
        }
    }

    /** The day, 1 for the first; 0 and below before it. */
    public long day() {
        return Math.floorDiv(minutes(), 24 * 60) + 1;
    }

    /** The minute of that day, 0 to 1439. */
    public int minuteOfDay() {
        return Math.floorMod(minutes(), 24 * 60);
    }

    private long minutes() {
        return Math.round(hours * 60);
    }
}
