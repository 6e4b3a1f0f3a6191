package io.github.weirwise.demo.chart;

import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.UnitSystem;

/** Turns metric values into the numbers that a person reads on an axis. */
record Shown(Unit unit, UnitSystem system) {
    double of(double metric) {
        return unit.toShown(metric, system);
    }

    Range of(Range metric) {
        return new Range(of(metric.low()), of(metric.high()));
    }

    String symbol() {
        return unit.symbol(system);
    }
}
