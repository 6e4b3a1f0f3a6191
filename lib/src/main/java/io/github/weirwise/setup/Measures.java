package io.github.weirwise.setup;

import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;

/** Numbers with the units in which answers and steps tell them. */
final class Measures {
    private Measures() {}

    static Quantity mm(double value) {
        return Quantity.of(value, Unit.MILLIMETRE);
    }

    static Quantity cm(double valueMm) {
        return Quantity.of(valueMm / 10, Unit.CENTIMETRE);
    }

    static Quantity litres(double value) {
        return Quantity.of(value, Unit.LITRE);
    }
}
