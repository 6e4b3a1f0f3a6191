package io.github.weirwise.diagnosis;

import io.github.weirwise.report.Range;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.FoamState;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What the journal says about the unit now.
 *
 * @param verdict how the foam is
 * @param states chance of each state of the foam; they add up to 1
 * @param causes what may be the matter, likeliest first
 * @param submergenceMm level in the column over the funnel base; holds with about 80 % chance
 * @param skimmateMlPerDay amount; holds with about 80 % chance
 * @param ledgers how level and amount add up, and how this unit answers to weir and air
 * @param forecastsMade amounts forecast lately, 20 at most
 * @param forecastsHeld how many of them came within their range
 * @param warnings doubts
 * @since 0.1
 */
public record Diagnosis(
        Verdict verdict,
        Map<FoamState, Double> states,
        List<CauseShare> causes,
        Range submergenceMm,
        Range skimmateMlPerDay,
        Ledgers ledgers,
        int forecastsMade,
        int forecastsHeld,
        List<Warning> warnings) {
    /** Copies; rejects nulls. */
    public Diagnosis {
        Objects.requireNonNull(verdict, "verdict");
        states = Map.copyOf(states);
        causes = List.copyOf(causes);
        Objects.requireNonNull(submergenceMm, "submergenceMm");
        Objects.requireNonNull(skimmateMlPerDay, "skimmateMlPerDay");
        Objects.requireNonNull(ledgers, "ledgers");
        warnings = List.copyOf(warnings);
    }

    /** The likeliest cause. */
    public CauseShare likeliest() {
        return causes.get(0);
    }

    /** Chance of a cause, 0 when it was not considered. */
    public double probability(Cause cause) {
        return causes.stream()
                .filter(share -> share.cause() == cause)
                .mapToDouble(CauseShare::probability)
                .sum();
    }
}
