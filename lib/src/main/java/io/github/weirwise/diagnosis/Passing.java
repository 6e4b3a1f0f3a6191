package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Happening;

/**
 * What a happening does to the amount until it has passed, as a logarithm with its standard deviation: food and oil break foam,
 * additives and decay make it (common practice; sizes are stated judgement).
 */
record Passing(double meanLog, double sd) {
    private static final Passing NONE = new Passing(0, 0);

    static Passing of(Happening.Kind kind) {
        return switch (kind) {
            case FED -> new Passing(-0.15, 0.25);
            case FED_HEAVILY -> new Passing(-0.8, 0.8);
            case HANDS_IN_TANK -> new Passing(-0.4, 0.5);
            case CONDITIONER, SEALANT -> new Passing(1.8, 1.1);
            case MEDICATION -> new Passing(1.4, 1.3);
            case ANIMAL_DIED -> new Passing(0.8, 0.8);
            case PUMP_STOPPED, PUMP_RESTARTED -> new Passing(0.3, 0.5);
            case WATER_CHANGE -> new Passing(-0.2, 0.4);
            case FIRST_START -> new Passing(0, 1.0);
            case TOP_OFF, CUP_EMPTIED, FLOOD -> NONE;
        };
    }
}
