package io.github.weirwise.tank;

import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmateStrength;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyInputs;
import io.github.weirwise.unit.SteadyLaw;
import io.github.weirwise.unit.SteadyPoint;

/** A unit's own {@link OperatingPoint} as the tank's skimmer, without the bands and warnings that a tank does not ask for. */
final class SteadySkimmer implements SkimmerLaw {
    private static final double ML_PER_DAY = 1e6 * 86400;

    private final SkimmerUnit unit;
    private final SteadyLaw law;

    SteadySkimmer(SkimmerUnit unit) {
        this.unit = unit;
        law = new SteadyLaw(unit);
    }

    @Override
    public FoamOutput at(Settings settings) {
        SteadyInputs inputs = SteadyInputs.of(unit, settings);
        SteadyPoint point = law.at(inputs);
        double load = settings.condition().skimmableMgPerLitre();
        return new FoamOutput(
                point.skimmateM3PerS() * ML_PER_DAY,
                SkimmateStrength.mgPerLitre(unit.traits(), load, point),
                inputs.airM3PerS() * 3.6e6,
                point.lipFlooded() || point.columnFlooded());
    }
}
