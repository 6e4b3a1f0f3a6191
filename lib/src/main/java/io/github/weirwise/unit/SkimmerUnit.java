package io.github.weirwise.unit;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Require;
import io.github.weirwise.report.Unit;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A foam fractionator as data: one weir, one or several equal columns behind it, and a cup. Measures are measured on the unit,
 * rated flows are those of its data sheet; the limits are those of common practice with a margin.
 *
 * @param name what its keeper calls it
 * @param columns number of equal columns that share the weir, the flow and the air, 1 to 12
 * @param column one of them
 * @param weir the weir
 * @param cupMl how much the cup holds before it runs over, 10 to 100000 mL
 * @param cupDrainLitresPerHour what the drain of the cup passes, 0.01 to 10000 L/h; empty for a cup without a drain, or whose
 *     drain is shut
 * @param ratedFlowLitresPerHour flow that the unit is meant for, 50 to 100000 L/h
 * @param ratedAirLitresPerHour air that its injectors draw together when clean, 1 to 20000 L/h
 * @param traits foam and bubbles
 * @param target what is wanted from it
 * @param layout where its chamber stands
 * @since 0.1
 */
public record SkimmerUnit(
        String name,
        int columns,
        Column column,
        Weir weir,
        double cupMl,
        OptionalDouble cupDrainLitresPerHour,
        double ratedFlowLitresPerHour,
        double ratedAirLitresPerHour,
        FoamTraits traits,
        Target target,
        Layout layout) {
    private static final String TRY = "unit.try.lookAtTheUnits";

    private static final Limit COLUMNS = Limit.of("columns", 1, 12, Unit.PLAIN, TRY);
    private static final Limit CUP_ML = Limit.of("cupMl", 10, 100000, Unit.MILLILITRE, TRY);
    private static final Limit CUP_DRAIN_LITRES_PER_HOUR =
            Limit.of("cupDrainLitresPerHour", 0.01, 10000, Unit.LITRE_PER_HOUR, TRY);
    private static final Limit RATED_FLOW_LITRES_PER_HOUR =
            Limit.of("ratedFlowLitresPerHour", 50, 100000, Unit.LITRE_PER_HOUR, TRY);
    private static final Limit RATED_AIR_LITRES_PER_HOUR =
            Limit.of("ratedAirLitresPerHour", 1, 20000, Unit.LITRE_PER_HOUR, TRY);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     * @throws IllegalArgumentException if the name is blank
     */
    public SkimmerUnit {
        Require.text("name", name);
        COLUMNS.check(columns);
        Objects.requireNonNull(column, "column");
        Objects.requireNonNull(weir, "weir");
        CUP_ML.check(cupMl);
        cupDrainLitresPerHour.ifPresent(drain -> CUP_DRAIN_LITRES_PER_HOUR.check(drain));
        RATED_FLOW_LITRES_PER_HOUR.check(ratedFlowLitresPerHour);
        RATED_AIR_LITRES_PER_HOUR.check(ratedAirLitresPerHour);
        Objects.requireNonNull(traits, "traits");
        Objects.requireNonNull(target, "target");
        Objects.requireNonNull(layout, "layout");
    }

    /** Logarithm of the amount over the wanted one that fills the cup within a day. */
    public double fillsCupLog() {
        return Math.log(cupMl / target.skimmateMlPerDay());
    }

    /** The same unit with other traits. */
    public SkimmerUnit withTraits(FoamTraits other) {
        return copy(cupDrainLitresPerHour, other);
    }

    /**
     * The same unit with a drain in its cup.
     *
     * @param litresPerHour what the drain passes, 0.01 to 10000 L/h
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public SkimmerUnit withCupDrainLitresPerHour(double litresPerHour) {
        return copy(OptionalDouble.of(litresPerHour), traits);
    }

    private SkimmerUnit copy(OptionalDouble drain, FoamTraits foam) {
        return new SkimmerUnit(
                name,
                columns,
                column,
                weir,
                cupMl,
                drain,
                ratedFlowLitresPerHour,
                ratedAirLitresPerHour,
                foam,
                target,
                layout);
    }

    /**
     * The unit running clean at its rated flow and air, 25 C, salinity 35, with the weir at the given crest.
     *
     * @param weirCrestMm height of the crest over the chamber floor, 1 to 2000 mm
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Settings ratedSettings(double weirCrestMm) {
        return new Settings(weirCrestMm, ratedFlowLitresPerHour, ratedAirLitresPerHour, 25, 35, Condition.REFERENCE);
    }
}
