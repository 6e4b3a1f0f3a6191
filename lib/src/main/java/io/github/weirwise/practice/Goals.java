package io.github.weirwise.practice;

import io.github.weirwise.report.Require;
import io.github.weirwise.unit.Part;
import java.util.List;

/**
 * When a scenario counts as solved. All that is asked for must hold; there is no mark.
 *
 * @param lastsHours length from the trainee's coming in, 1 to 1500 h
 * @param onTarget whether the last day must lie in the wanted band, without a flood
 * @param lookAfter parts that must have been serviced
 * @param leaveWeir whether the weir must not be moved
 * @param mostChanges most moves and services together, 0 to 100
 * @param safeWithinHours hours from the first flood within which the air must be stopped or the weir lowered; 0 for not asked
 * @since 0.1
 */
public record Goals(
        double lastsHours,
        boolean onTarget,
        List<Part> lookAfter,
        boolean leaveWeir,
        int mostChanges,
        double safeWithinHours) {
    /**
     * Copies the list.
     *
     * @throws io.github.weirwise.report.OutOfRangeException if a number is out of its range
     */
    public Goals {
        Require.inRange("lastsHours", lastsHours, 1, 2400, "h", "a few days, or 2160 for 90 days");
        lookAfter = List.copyOf(lookAfter);
        Require.inRange("mostChanges", mostChanges, 0, 100, "", "3 is usual");
        Require.inRange("safeWithinHours", safeWithinHours, 0, 1500, "h", "0 when nothing has to be made safe");
    }
}
