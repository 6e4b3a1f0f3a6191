package io.github.weirwise.diagnosis;

import io.github.weirwise.report.Range;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.FoamState;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What the journal says about a unit.
 *
 * @param verdict the state of the foam, or that it cannot be told
 * @param states probability of each state, together 1
 * @param causes all causes, likeliest first, together 1
 * @param submergenceMm likely column level over the funnel base, 80 % range
 * @param skimmateMlPerDay likely amount of skimmate, 80 % range
 * @param meanLifeSeconds likely mean life of this unit's foam at the reference condition, 80 % range; narrows as the
 *     journal grows
 * @param warnings doubts about the readings, gravest first
 * @since 0.1
 */
public record Diagnosis(
        Verdict verdict,
        Map<FoamState, Double> states,
        List<CauseShare> causes,
        Range submergenceMm,
        Range skimmateMlPerDay,
        Range meanLifeSeconds,
        List<Warning> warnings) {
    /** Copies; rejects nulls. */
    public Diagnosis {
        Objects.requireNonNull(verdict, "verdict");
        states = Map.copyOf(states);
        causes = List.copyOf(causes);
        Objects.requireNonNull(submergenceMm, "submergenceMm");
        Objects.requireNonNull(skimmateMlPerDay, "skimmateMlPerDay");
        Objects.requireNonNull(meanLifeSeconds, "meanLifeSeconds");
        warnings = List.copyOf(warnings);
    }

    /** The likeliest cause. */
    public CauseShare likeliest() {
        return causes.get(0);
    }

    /** Probability of a cause, 0 when it was not considered. */
    public double probability(Cause cause) {
        return causes.stream()
                .filter(share -> share.cause() == cause)
                .mapToDouble(CauseShare::probability)
                .sum();
    }
}
