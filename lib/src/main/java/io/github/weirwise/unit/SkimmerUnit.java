package io.github.weirwise.unit;

import io.github.weirwise.report.Require;
import java.util.Objects;

/**
 * A foam fractionator as data: one weir, one or several equal columns behind it, and a cup. Measures are measured on the unit,
 * rated flows are those of its data sheet; the limits are those of common practice with a margin.
 *
 * @param name what its keeper calls it
 * @param columns number of equal columns that share the weir, the flow and the air, 1 to 12
 * @param column one of them
 * @param weir the weir
 * @param cupMl how much the cup holds before it runs over, 10 to 100000 mL
 * @param ratedFlowLitresPerHour flow that the unit is meant for, 50 to 100000 L/h
 * @param ratedAirLitresPerHour air that its injectors draw together when clean, 1 to 20000 L/h
 * @param traits foam and bubbles
 * @param target what is wanted from it
 * @since 0.1
 */
public record SkimmerUnit(
        String name,
        int columns,
        Column column,
        Weir weir,
        double cupMl,
        double ratedFlowLitresPerHour,
        double ratedAirLitresPerHour,
        FoamTraits traits,
        Target target) {
    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     * @throws IllegalArgumentException if the name is blank
     */
    public SkimmerUnit {
        Require.text("name", name);
        String fix = "look at the unit's data again";
        Require.inRange("columns", columns, 1, 12, "", fix);
        Objects.requireNonNull(column, "column");
        Objects.requireNonNull(weir, "weir");
        Require.inRange("cupMl", cupMl, 10, 100000, "mL", fix);
        Require.inRange("ratedFlowLitresPerHour", ratedFlowLitresPerHour, 50, 100000, "L/h", fix);
        Require.inRange("ratedAirLitresPerHour", ratedAirLitresPerHour, 1, 20000, "L/h", fix);
        Objects.requireNonNull(traits, "traits");
        Objects.requireNonNull(target, "target");
    }

    /** The same unit with other traits. */
    public SkimmerUnit withTraits(FoamTraits other) {
        return new SkimmerUnit(
                name, columns, column, weir, cupMl, ratedFlowLitresPerHour, ratedAirLitresPerHour, other, target);
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
