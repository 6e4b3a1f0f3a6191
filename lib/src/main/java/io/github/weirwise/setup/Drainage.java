package io.github.weirwise.setup;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import java.util.Objects;

/**
 * The way from the tank's overflow down to the skimmer chamber.
 *
 * @param pipes equal pipes side by side that share the flow, 1 to 8
 * @param each one of them
 * @param inletBelowCrestMm how far the pipe's inlet lies under the overflow's crest, 0 to 3000 mm
 * @param outletMm height of the outlet over the base on which the filter stands, -500 to 3000 mm
 */
public record Drainage(int pipes, Plumbing each, double inletBelowCrestMm, double outletMm) {
    private static final Limit PIPES = Limit.of("pipes", 1, 8, Unit.PLAIN, "setup.try.countThePipesThat");
    private static final Limit INLET_BELOW_CREST_MM =
            Limit.of("inletBelowCrestMm", 0, 3000, Unit.MILLIMETRE, "setup.try.measureDownFromThe");
    private static final Limit OUTLET_MM =
            Limit.of("outletMm", -500, 3000, Unit.MILLIMETRE, "setup.try.measureUpFromThe");

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public Drainage {
        PIPES.check(pipes);
        Objects.requireNonNull(each, "each");
        INLET_BELOW_CREST_MM.check(inletBelowCrestMm);
        OUTLET_MM.check(outletMm);
    }
}
