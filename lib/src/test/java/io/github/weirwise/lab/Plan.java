package io.github.weirwise.lab;

import io.github.weirwise.lab.truth.Fouling;
import io.github.weirwise.lab.truth.ResponseLaw;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.List;
import java.util.Set;

/**
 * Everything about one hidden tank that no policy can change.
 *
 * @param seed its seed
 * @param truth its family
 * @param sheet the data sheet that the keeper has
 * @param law how it answers
 * @param water what its water does
 * @param startCrestMm where the weir stands at first
 * @param startFouling state of its parts at the first hour
 * @param pacePerHour how fast each part fouls, by ordinal
 * @param faults what goes wrong besides
 * @param upkeep what somebody cleaned unasked, in order of time
 * @param label the hidden fault, for tables
 * @param firstHour hour of the first reading, negative when there is a history
 * @param missed planned visits to which nobody comes, hours
 * @param lagHours hours in which foam answers
 */
record Plan(
        long seed,
        Truth truth,
        SkimmerUnit sheet,
        ResponseLaw law,
        Water water,
        double startCrestMm,
        Fouling startFouling,
        double[] pacePerHour,
        List<Fault> faults,
        List<Upkeep> upkeep,
        String label,
        int firstHour,
        Set<Integer> missed,
        double lagHours) {
    /** Statements about days after the end are judged up to so many hours later. */
    static final int AFTERWARDS_HOURS = 96;

    /** The cup was emptied so long before the first reading. */
    static final int BEFORE_HOURS = 24;

    int horizonHours() {
        return 24 * truth.days();
    }

    int everyHours() {
        return 24 * truth.everyDays();
    }
}
