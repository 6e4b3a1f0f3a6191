package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.UnitSystem;
import java.util.function.DoubleFunction;

/** A measure that is taken now and then, with its unit. */
enum Measure {
    HEAD(Unit.MILLIMETRE, Observation.HeadOverCrest::new),
    CREST(Unit.MILLIMETRE, Observation.CrestAgainstMark::new),
    OUTSIDE(Unit.MILLIMETRE, Observation.OutsideLevel::new),
    BEYOND(Unit.MILLIMETRE, Observation.LevelBeyondWeir::new),
    AIR(Unit.LITRE_PER_HOUR, Observation.AirFlow::new),
    FLOW(Unit.LITRE_PER_HOUR, Observation.ReturnFlow::new),
    COLLAPSE(Unit.SECOND, Observation.FoamCollapse::new),
    SALINITY(Unit.SALINITY, Observation.Salinity::new),
    TEMPERATURE(Unit.CELSIUS, Observation.WaterTemperature::new);

    private final Unit unit;
    private final DoubleFunction<Observation> make;

    Measure(Unit unit, DoubleFunction<Observation> make) {
        this.unit = unit;
        this.make = make;
    }

    /** The observation behind a number typed in a system of units. */
    Observation observation(double typed, UnitSystem system) {
        return make.apply(unit.fromShown(typed, system));
    }

    /** Name with the unit that is typed. */
    String label(Dress dress) {
        String symbol = unit.symbol(dress.words().book().units());
        String name = dress.text("measure." + this);
        return symbol.isEmpty() ? name : dress.text("box.name", name, symbol);
    }
}
