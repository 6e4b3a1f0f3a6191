package io.github.weirwise.demo.picture;

import io.github.weirwise.report.Range;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;

/**
 * What the picture shows at one moment; immutable, so that it may be painted while the tank runs on.
 *
 * @param unit the unit
 * @param settings how it is set
 * @param point levels and gas by these settings
 * @param skimmateMlPerDay what comes over the lip now; lags behind {@code point}
 * @param cupMl what stands in the cup
 * @param cupPtCo how dark that is
 * @param bandMm levels over the funnel base that give a wanted amount, by this unit in this water
 * @param figures whether numbers are written into the picture; without them it shows what a person sees at a glance
 */
public record Scene(
        SkimmerUnit unit,
        Settings settings,
        OperatingPoint point,
        double skimmateMlPerDay,
        double cupMl,
        double cupPtCo,
        Range bandMm,
        boolean figures) {
    /** Half of the band that is drawn when no crest gives the wanted amounts. */
    static final double USUAL_HALF_BAND_MM = 4;

    /** The unit with these settings; amount and cup as they are at the moment. */
    public static Scene of(SkimmerUnit unit, Settings settings, double skimmateMlPerDay, double cupMl, double cupPtCo) {
        OperatingPoint point = OperatingPoint.of(unit, settings);
        return new Scene(
                unit, settings, point, skimmateMlPerDay, cupMl, cupPtCo, new WantedLevels().of(unit, settings), true);
    }

    /** The unit at rest with these settings and a cup filled for some hours. */
    public static Scene atRest(SkimmerUnit unit, Settings settings, double hours) {
        OperatingPoint point = OperatingPoint.of(unit, settings);
        return new Scene(
                unit,
                settings,
                point,
                point.skimmateMlPerDay(),
                Math.min(unit.cupMl(), point.skimmateMlPerDay() * hours / 24),
                point.darknessPtCo(),
                new WantedLevels().of(unit, settings),
                true);
    }

    /** What a person sees who stands there: no figures, and of what is wanted only what the unit's sheet says. */
    public static Scene atAGlance(
            SkimmerUnit unit, Settings settings, OperatingPoint point, double skimmateMlPerDay, double cupMl) {
        Range wanted = Range.around(unit.target().submergenceMm(), USUAL_HALF_BAND_MM);
        return new Scene(unit, settings, point, skimmateMlPerDay, cupMl, point.darknessPtCo(), wanted, false);
    }

    /** Skimmate now against what is wanted. */
    public double amountRatio() {
        return skimmateMlPerDay / unit.target().skimmateMlPerDay();
    }
}
