package io.github.weirwise.practice;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Part;
import java.util.List;

/**
 * When a scenario counts as solved. All that is asked for must hold; there is no mark.
 *
 * @param lastsHours length from the trainee's coming in, 1 to 2400 h
 * @param onTarget whether the last day must lie in the wanted band, without a flood
 * @param lookAfter parts that must have been serviced
 * @param leaveWeir whether the weir must not be moved
 * @param mostChanges most moves and services together, 0 to 100
 * @param safeWithinHours hours from the first flood within which the air must be stopped or the weir lowered; 0 for not asked
 */
public record Goals(
        double lastsHours,
        boolean onTarget,
        List<Part> lookAfter,
        boolean leaveWeir,
        int mostChanges,
        double safeWithinHours) {
    private static final Limit LASTS_HOURS = Limit.of("lastsHours", 1, 2400, Unit.HOUR, "practice.try.aFewDaysTo");
    private static final Limit MOST_CHANGES = Limit.of("mostChanges", 0, 100, Unit.PLAIN, "practice.try.3IsUsual");
    private static final Limit SAFE_WITHIN_HOURS =
            Limit.of("safeWithinHours", 0, 1500, Unit.HOUR, "practice.try.0WhenNothingHas");

    /**
     * Copies the list.
     *
     * @throws io.github.weirwise.report.OutOfRangeException if a number is out of its range
     */
    public Goals {
        LASTS_HOURS.check(lastsHours);
        lookAfter = List.copyOf(lookAfter);
        MOST_CHANGES.check(mostChanges);
        SAFE_WITHIN_HOURS.check(safeWithinHours);
    }
}
