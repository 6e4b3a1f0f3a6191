package io.github.weirwise.tank;

import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmateStrength;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyInputs;
import io.github.weirwise.unit.SteadyLaw;
import io.github.weirwise.unit.SteadyPoint;

/**
 * How the skimmer of a tank behaves at rest. The tank asks it thousands of times a simulated year, from one thread at a
 * time; it must be a pure function.
 */
@FunctionalInterface
public interface SkimmerLaw {
    /** What the skimmer gives at rest with these settings, in water of this load and with parts of this condition. */
    FoamOutput at(Settings settings);

    /** The law of a unit: its {@link OperatingPoint}, without the bands and warnings that a tank does not ask for. */
    static SkimmerLaw of(SkimmerUnit unit) {
        SteadyLaw law = new SteadyLaw(unit);
        return settings -> {
            SteadyInputs inputs = SteadyInputs.of(unit, settings);
            SteadyPoint point = law.at(inputs);
            double load = settings.condition().skimmableMgPerLitre();
            return new FoamOutput(
                    point.skimmateM3PerS() * (1e6 * 86400),
                    SkimmateStrength.mgPerLitre(unit.traits(), load, point),
                    inputs.airM3PerS() * 3.6e6,
                    point.lipFlooded() || point.columnFlooded());
        };
    }
}
