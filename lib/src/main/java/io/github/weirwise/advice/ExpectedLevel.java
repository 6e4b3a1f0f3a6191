package io.github.weirwise.advice;

import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyInputs;
import io.github.weirwise.unit.SteadyLaw;

/** The level that a unit's sheet gives with settings; asked again with the same ones, it is not computed again. */
final class ExpectedLevel {
    private final SkimmerUnit unit;
    private final SteadyLaw law;
    private Settings settings;
    private double mm;

    ExpectedLevel(SkimmerUnit unit) {
        this.unit = unit;
        this.law = new SteadyLaw(unit);
    }

    /** Bubbly water over the funnel base, mm. */
    double mm(Settings with) {
        if (!with.equals(settings)) {
            settings = with;
            mm = law.at(SteadyInputs.of(unit, with)).columnLevelM() * 1000
                    - unit.column().funnelBaseMm();
        }
        return mm;
    }
}
