package io.github.weirwise.tank;

import io.github.weirwise.skimmer.FoamState;
import io.github.weirwise.skimmer.OperatingPoint;
import io.github.weirwise.skimmer.Settings;
import io.github.weirwise.skimmer.SkimmerUnit;
import io.github.weirwise.skimmer.SteadyLaw;

/** A unit's own {@link OperatingPoint} as the tank's skimmer. */
final class SteadySkimmer implements SkimmerLaw {
    private final SkimmerUnit unit;
    private final SteadyLaw law;

    SteadySkimmer(SkimmerUnit unit) {
        this.unit = unit;
        law = new SteadyLaw(unit);
    }

    @Override
    public FoamOutput at(Settings settings) {
        OperatingPoint point = OperatingPoint.of(unit, settings, law);
        return new FoamOutput(
                point.skimmateMlPerDay(),
                point.strengthMgPerLitre(),
                point.airLitresPerHour(),
                point.foamState() == FoamState.FLOODING);
    }
}
