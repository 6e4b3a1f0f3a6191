package io.github.weirwise.practice;

import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import java.util.Objects;

/**
 * What is really the matter, told in the debrief.
 *
 * @param cause its name in the diagnosis
 * @param fromHours since when, on the scenario's clock
 * @param words what was hidden, for the debrief
 */
public record HiddenFault(Cause cause, double fromHours, String words) {
    private static final Limit FROM_HOURS = Limit.of("fromHours", -1e4, 1e4, Unit.HOUR, "practice.try.giveTheHourOn");

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if the hour is out of its range
     */
    public HiddenFault {
        Objects.requireNonNull(cause, "cause");
        FROM_HOURS.check(fromHours);
        ScenarioText.required("words", words);
    }
}
