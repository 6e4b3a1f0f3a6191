package io.github.weirwise.report;

import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Objects;

/**
 * An instant of a real journal, told as the clock on the reader's wall: {@code Thursday 08:00} within six days of the
 * telling, {@code 26 November, 08:00} further away, with the year when that is another one.
 *
 * @param at the instant
 * @param zone where the clock hangs
 * @param told when it is told; decides how much of the date is needed
 * @since 0.2
 */
public record Moment(Instant at, ZoneId zone, Instant told) {
    /** Rejects nulls. */
    public Moment {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(told, "told");
    }

    /** Key of the date pattern that is enough here. */
    String patternKey() {
        var day = at.atZone(zone).toLocalDate();
        var today = told.atZone(zone).toLocalDate();
        if (Math.abs(ChronoUnit.DAYS.between(today, day)) <= 6) {
            return "report.moment.near";
        }
        return day.getYear() == today.getYear() ? "report.moment.sameYear" : "report.moment.otherYear";
    }
}
