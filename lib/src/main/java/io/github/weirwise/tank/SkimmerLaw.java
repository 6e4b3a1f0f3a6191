package io.github.weirwise.tank;

import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;

/**
 * How the skimmer of a tank behaves at rest. The tank asks it thousands of times a simulated year, from one thread at a
 * time; it must be a pure function.
 */
@FunctionalInterface
public interface SkimmerLaw {
    /** What the skimmer gives at rest with these settings, in water of this load and with parts of this condition. */
    FoamOutput at(Settings settings);

    /** The law of a unit: its {@link OperatingPoint}. */
    static SkimmerLaw of(SkimmerUnit unit) {
        return new SteadySkimmer(unit);
    }
}
