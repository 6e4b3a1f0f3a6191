package io.github.weirwise.demo.picture;

import io.github.weirwise.skimmer.OperatingPoint;
import io.github.weirwise.skimmer.Settings;
import io.github.weirwise.skimmer.SkimmerUnit;

/**
 * What the picture shows at one moment; immutable, so that it may be painted while the tank runs on.
 *
 * @param unit the unit
 * @param settings how it is set
 * @param point levels and gas by these settings
 * @param skimmateMlPerDay what comes over the lip now; lags behind {@code point}
 * @param cupMl what stands in the cup
 * @param cupPtCo how dark that is
 */
public record Scene(
        SkimmerUnit unit,
        Settings settings,
        OperatingPoint point,
        double skimmateMlPerDay,
        double cupMl,
        double cupPtCo) {
    /** The unit at rest with these settings and a cup filled for some hours. */
    public static Scene atRest(SkimmerUnit unit, Settings settings, double hours) {
        OperatingPoint point = OperatingPoint.of(unit, settings);
        return new Scene(
                unit,
                settings,
                point,
                point.skimmateMlPerDay(),
                Math.min(unit.cupMl(), point.skimmateMlPerDay() * hours / 24),
                point.darknessPtCo());
    }

    /** Skimmate now against what is wanted. */
    public double amountRatio() {
        return skimmateMlPerDay / unit.target().skimmateMlPerDay();
    }
}
