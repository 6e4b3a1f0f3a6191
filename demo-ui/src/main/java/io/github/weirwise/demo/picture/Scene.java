package io.github.weirwise.demo.picture;

import io.github.weirwise.report.Range;
import io.github.weirwise.unit.LipAnswer;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Target;
import java.util.Optional;

/**
 * What the picture shows at one moment; immutable, so that it may be painted while the tank runs on.
 *
 * @param unit the unit
 * @param settings how it is set
 * @param point levels and gas by these settings
 * @param skimmateMlPerDay what comes over the lip now; lags behind {@code point}
 * @param collected where the skimmate went
 * @param expected what was said to come, drawn in before it comes
 * @param figures whether numbers are written into the picture; without them it shows what a person sees at a glance
 */
public record Scene(
        SkimmerUnit unit,
        Settings settings,
        OperatingPoint point,
        double skimmateMlPerDay,
        Collected collected,
        Optional<Expected> expected,
        boolean figures) {
    /** What was said to come: level over the funnel base and amount. */
    public record Expected(Range levelMm, Range mlPerDay) {}

    /** The unit at rest with these settings and a cup filled for some hours. */
    public static Scene atRest(SkimmerUnit unit, Settings settings, double hours) {
        OperatingPoint point = OperatingPoint.of(unit, settings);
        double cupMl = Math.min(unit.cupMl(), point.skimmateMlPerDay() * hours / 24);
        Collected cup = Collected.inCup(CupFill.of(cupMl, point.darknessPtCo()));
        return new Scene(unit, settings, point, point.skimmateMlPerDay(), cup, Optional.empty(), true);
    }

    /** The unit with these settings, giving what is wanted into an empty cup, without figures. */
    public static Scene wanted(SkimmerUnit unit, Settings settings) {
        return new Scene(
                unit,
                settings,
                OperatingPoint.of(unit, settings),
                unit.target().skimmateMlPerDay(),
                Collected.NOTHING,
                Optional.empty(),
                false);
    }

    /** The same without figures, since nobody read them. */
    public Scene withoutFigures() {
        return new Scene(unit, settings, point, skimmateMlPerDay, collected, expected, false);
    }

    /** The same with what was said to come. */
    public Scene expecting(Range levelMm, Range mlPerDay) {
        Optional<Expected> said = Optional.of(new Expected(levelMm, mlPerDay));
        return new Scene(unit, settings, point, skimmateMlPerDay, collected, said, figures);
    }

    /** Skimmate now against what is wanted. */
    public double amountRatio() {
        return skimmateMlPerDay / unit.target().skimmateMlPerDay();
    }

    CupFill cup() {
        return collected.cup();
    }

    /**
     * The unit's own wanted levels over the funnel base: where a clean unit at its rated air gives the wanted amounts. Air or
     * film do not move it: they are put right themselves, not with the weir.
     */
    public Range bandMm() {
        double perMm =
                Math.log(unit.traits().lipAnswer().orElse(LipAnswer.USUAL).levelFactorPerMm());
        double level = unit.target().submergenceMm();
        return new Range(
                level + Math.log(Target.AMOUNT_BAND.low()) / perMm,
                level + Math.log(Target.AMOUNT_BAND.high()) / perMm);
    }
}
