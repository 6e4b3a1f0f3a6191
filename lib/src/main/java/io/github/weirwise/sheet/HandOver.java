package io.github.weirwise.sheet;

import io.github.weirwise.care.CarePlan;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * What the next person has to know of a unit.
 *
 * @param unit the unit
 * @param settings how it is set now
 * @param journal what was seen and done
 * @param plan what is due
 * @param fit its fit check, if there was one
 * @param now when it is handed over
 */
public record HandOver(
        SkimmerUnit unit, Settings settings, Journal journal, CarePlan plan, Optional<FitCheck> fit, Instant now) {
    /** Rejects nulls. */
    public HandOver {
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(settings, "settings");
        Objects.requireNonNull(journal, "journal");
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(fit, "fit");
        Objects.requireNonNull(now, "now");
    }

    /** With the care plan that the journal asks for now; the cup drains into the fit check's container if there is one. */
    public static HandOver of(
            SkimmerUnit unit, Settings settings, Journal journal, Optional<FitCheck> fit, Instant now) {
        double vesselMl = fit.map(check -> 1000 * check.installation().hose().containerLitres())
                .orElse(unit.cupMl());
        return new HandOver(unit, settings, journal.until(now), CarePlan.of(journal, now, vesselMl), fit, now);
    }
}
