package io.github.weirwise.practice;

import io.github.weirwise.report.Require;

/**
 * Something that the trainee is told at a moment; it may be wrong, as people are.
 *
 * @param atHours when, on the scenario's clock
 * @param says the words
 * @since 0.1
 */
public record Message(double atHours, String says) {
    /**
     * @throws io.github.weirwise.report.OutOfRangeException if the hour is out of its range
     */
    public Message {
        Require.inRange("atHours", atHours, -1e4, 1e4, "h", "give the hour on the scenario's clock");
        ScenarioText.required("says", says);
    }
}
