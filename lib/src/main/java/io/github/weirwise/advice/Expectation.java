package io.github.weirwise.advice;

import io.github.weirwise.report.Range;
import java.util.Objects;

/**
 * What should be seen at the time of judging if the advice is followed; each range holds with about 80 % chance.
 *
 * @param submergenceMm column level over the funnel base
 * @param skimmateMlPerDay amount
 * @param darknessPtCo darkness
 * @param chanceOnTarget chance that the amount lies in the target's band, 0 to 1
 * @since 0.1
 */
public record Expectation(Range submergenceMm, Range skimmateMlPerDay, Range darknessPtCo, double chanceOnTarget) {
    /** Rejects nulls. */
    public Expectation {
        Objects.requireNonNull(submergenceMm, "submergenceMm");
        Objects.requireNonNull(skimmateMlPerDay, "skimmateMlPerDay");
        Objects.requireNonNull(darknessPtCo, "darknessPtCo");
    }
}
