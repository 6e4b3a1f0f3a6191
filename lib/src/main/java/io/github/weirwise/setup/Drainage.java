package io.github.weirwise.setup;

import io.github.weirwise.report.Require;
import java.util.Objects;

/**
 * The way from the tank's overflow down to the skimmer chamber.
 *
 * @param pipes equal pipes side by side that share the flow, 1 to 8
 * @param each one of them
 * @param inletBelowCrestMm how far the pipe's inlet lies under the overflow's crest, 0 to 3000 mm
 * @param outletMm height of the outlet over the base on which the filter stands, -500 to 3000 mm
 * @since 0.1
 */
public record Drainage(int pipes, Plumbing each, double inletBelowCrestMm, double outletMm) {
    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public Drainage {
        Require.inRange("pipes", pipes, 1, 8, "", "count the pipes that carry water in normal running");
        Objects.requireNonNull(each, "each");
        Require.inRange("inletBelowCrestMm", inletBelowCrestMm, 0, 3000, "mm", "measure down from the crest");
        Require.inRange("outletMm", outletMm, -500, 3000, "mm", "measure up from the base of the filter");
    }
}
