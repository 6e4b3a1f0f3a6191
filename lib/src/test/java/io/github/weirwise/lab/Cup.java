package io.github.weirwise.lab;

import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Target;

/**
 * The cup. Once it is full, foam in band stands still under its lid; wetter foam than that runs over, and that is a flood.
 */
final class Cup {
    private final double capacityMl;
    private final double wantedMlPerHour;
    private double ml;
    private double hours;

    Cup(SkimmerUnit sheet) {
        capacityMl = sheet.cupMl();
        wantedMlPerHour = sheet.target().skimmateMlPerDay() / 24;
    }

    Cup(Cup other) {
        capacityMl = other.capacityMl;
        wantedMlPerHour = other.wantedMlPerHour;
        ml = other.ml;
        hours = other.hours;
    }

    /** An hour's amount, as a multiple of the wanted; true when water left cup and drain. */
    boolean take(double amount) {
        ml += amount * wantedMlPerHour;
        hours++;
        boolean over = ml > capacityMl;
        ml = Math.min(ml, capacityMl);
        return over && amount > Target.AMOUNT_BAND.high();
    }

    void empty() {
        ml = 0;
        hours = 0;
    }

    double ml() {
        return ml;
    }

    double hours() {
        return hours;
    }

    boolean full() {
        return ml >= 0.98 * capacityMl;
    }

    double capacityMl() {
        return capacityMl;
    }
}
