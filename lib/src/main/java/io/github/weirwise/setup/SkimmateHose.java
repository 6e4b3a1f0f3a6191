package io.github.weirwise.setup;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

/**
 * Where the skimmate goes: down a hose into a container.
 *
 * @param containerLitres what the container holds, 0.1 to 1000 L
 * @param emptiedEveryDays longest time between two emptyings, 0.1 to 60 days
 * @param hoseLengthMm length of the hose, 10 to 20000 mm
 * @param hoseFallMm how much lower its end lies than its start; negative when it rises, -3000 to 5000 mm
 */
public record SkimmateHose(double containerLitres, double emptiedEveryDays, double hoseLengthMm, double hoseFallMm) {
    private static final Limit CONTAINER_LITRES =
            Limit.of("containerLitres", 0.1, 1000, Unit.LITRE, "setup.try.giveWhatTheContainer");
    private static final Limit EMPTIED_EVERY_DAYS =
            Limit.of("emptiedEveryDays", 0.1, 60, Unit.DAY, "setup.try.skimmateRotsEmptyIt");
    private static final Limit HOSE_LENGTH_MM =
            Limit.of("hoseLengthMm", 10, 20000, Unit.MILLIMETRE, "setup.try.measureAlongTheHose");
    private static final Limit HOSE_FALL_MM =
            Limit.of("hoseFallMm", -3000, 5000, Unit.MILLIMETRE, "setup.try.heightOfItsStart");

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public SkimmateHose {
        CONTAINER_LITRES.check(containerLitres);
        EMPTIED_EVERY_DAYS.check(emptiedEveryDays);
        HOSE_LENGTH_MM.check(hoseLengthMm);
        HOSE_FALL_MM.check(hoseFallMm);
    }
}
