package io.github.weirwise.setup;

import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.WeirSetting;
import java.util.OptionalDouble;

/**
 * Where the weir starts: the crest that gives the unit's wanted submergence at the flow that the return pump delivers,
 * with rated air, all parts clean and the load that the unit is stated for.
 *
 * @param crestMm over the chamber floor; empty when the weir's travel does not reach it
 * @param settings the settings with that crest, or with the nearest end of the travel
 * @param point how the unit runs with them
 */
public record WeirStart(OptionalDouble crestMm, Settings settings, OperatingPoint point) {
    /** Solves for an installation and the flow through it. */
    public static WeirStart of(Installation installation, double flowLitresPerHour) {
        SkimmerUnit unit = installation.filter().unit();
        double anyCrestMm = unit.weir().highestCrestMm();
        Settings running = unit.ratedSettings(anyCrestMm)
                .withFlowLitresPerHour(Math.min(100000, flowLitresPerHour))
                .withWaterCelsius(installation.waterCelsius())
                .withPracticalSalinity(installation.practicalSalinity());
        double wantedMm = unit.target().submergenceMm();
        OptionalDouble crest = WeirSetting.crestForSubmergence(unit, running, wantedMm);
        Settings set = running.withWeirCrestMm(crest.orElseGet(() -> nearestEndMm(unit, running, wantedMm)));
        return new WeirStart(crest, set, OperatingPoint.of(unit, set));
    }

    private static double nearestEndMm(SkimmerUnit unit, Settings running, double wantedMm) {
        double lowestMm = unit.weir().lowestCrestMm();
        double atLowestMm =
                OperatingPoint.of(unit, running.withWeirCrestMm(lowestMm)).submergenceMm();
        return atLowestMm > wantedMm ? lowestMm : unit.weir().highestCrestMm();
    }
}
