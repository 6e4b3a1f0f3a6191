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
 * @param cup what stands in the cup
 * @param waste the container, where the cup's drain is open; without it the skimmate stays in the cup
 * @param expected what was said to come, drawn in before it comes
 * @param figures whether numbers are written into the picture; without them it shows what a person sees at a glance
 */
public record Scene(
        SkimmerUnit unit,
        Settings settings,
        OperatingPoint point,
        double skimmateMlPerDay,
        CupFill cup,
        Optional<Waste> waste,
        Optional<Expected> expected,
        boolean figures) {
    /** The container that the cup drains into. */
    public record Waste(double ml, double capacityMl) {}

    /** What was said to come: level over the funnel base and amount. */
    public record Expected(Range levelMm, Range mlPerDay) {}

    /** The unit with these settings; amount and cup as they are at the moment. */
    public static Scene of(SkimmerUnit unit, Settings settings, double skimmateMlPerDay, double cupMl, double cupPtCo) {
        OperatingPoint point = OperatingPoint.of(unit, settings);
        return new Scene(
                unit,
                settings,
                point,
                skimmateMlPerDay,
                CupFill.of(cupMl, cupPtCo),
                Optional.empty(),
                Optional.empty(),
                true);
    }

    /** The unit at rest with these settings and a cup filled for some hours. */
    public static Scene atRest(SkimmerUnit unit, Settings settings, double hours) {
        OperatingPoint point = OperatingPoint.of(unit, settings);
        double cupMl = Math.min(unit.cupMl(), point.skimmateMlPerDay() * hours / 24);
        return of(unit, settings, point.skimmateMlPerDay(), cupMl, point.darknessPtCo());
    }

    /** What a person sees who stands there: no figures. */
    public static Scene atAGlance(
            SkimmerUnit unit, Settings settings, OperatingPoint point, double skimmateMlPerDay, double cupMl) {
        return new Scene(
                unit,
                settings,
                point,
                skimmateMlPerDay,
                CupFill.of(cupMl, point.darknessPtCo()),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    /** The same with something else in the cup. */
    public Scene holding(CupFill other) {
        return new Scene(unit, settings, point, skimmateMlPerDay, other, waste, expected, figures);
    }

    /** The same without figures, since nobody read them. */
    public Scene withoutFigures() {
        return new Scene(unit, settings, point, skimmateMlPerDay, cup, waste, expected, false);
    }

    /** The same with a container that the cup drains into. */
    public Scene drainedInto(double ml, double capacityMl) {
        return new Scene(
                unit,
                settings,
                point,
                skimmateMlPerDay,
                cup,
                Optional.of(new Waste(ml, capacityMl)),
                expected,
                figures);
    }

    /** The same with what was said to come. */
    public Scene expecting(Range levelMm, Range mlPerDay) {
        return new Scene(
                unit,
                settings,
                point,
                skimmateMlPerDay,
                cup,
                waste,
                Optional.of(new Expected(levelMm, mlPerDay)),
                figures);
    }

    /** Skimmate now against what is wanted. */
    public double amountRatio() {
        return skimmateMlPerDay / unit.target().skimmateMlPerDay();
    }

    public double cupMl() {
        return cup.ml();
    }

    /** Darkness of the stirred cup; of what comes now when it is empty. */
    public double cupPtCo() {
        return cup.layers().isEmpty() ? Sight.of(this).foamPtCo() : cup.ptCo();
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
