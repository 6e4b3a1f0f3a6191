package io.github.weirwise.setup;

import io.github.weirwise.report.Require;

/**
 * Where the skimmate goes: down a hose into a container.
 *
 * @param containerLitres what the container holds, 0.1 to 1000 L
 * @param emptiedEveryDays longest time between two emptyings, 0.1 to 60 days
 * @param hoseLengthMm length of the hose, 10 to 20000 mm
 * @param hoseFallMm how much lower its end lies than its start; negative when it rises, -3000 to 5000 mm
 * @since 0.1
 */
public record SkimmateHose(double containerLitres, double emptiedEveryDays, double hoseLengthMm, double hoseFallMm) {
    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public SkimmateHose {
        Require.inRange("containerLitres", containerLitres, 0.1, 1000, "L", "give what the container holds");
        Require.inRange("emptiedEveryDays", emptiedEveryDays, 0.1, 60, "days", "skimmate rots; empty it within weeks");
        Require.inRange("hoseLengthMm", hoseLengthMm, 10, 20000, "mm", "measure along the hose");
        Require.inRange("hoseFallMm", hoseFallMm, -3000, 5000, "mm", "height of its start less that of its end");
    }
}
