package io.github.weirwise.practice;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

/**
 * Something that the trainee is told at a moment; it may be wrong, as people are.
 *
 * @param atHours when, on the scenario's clock
 * @param says the words
 */
public record Message(double atHours, String says) {
    private static final Limit AT_HOURS = Limit.of("atHours", -1e4, 1e4, Unit.HOUR, "practice.try.giveTheHourOn");

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if the hour is out of its range
     */
    public Message {
        AT_HOURS.check(atHours);
        ScenarioText.required("says", says);
    }
}
