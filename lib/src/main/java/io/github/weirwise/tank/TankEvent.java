package io.github.weirwise.tank;

import io.github.weirwise.report.Require;
import java.util.Objects;

/**
 * Something that happens to a tank at one hour of its clock: by hands, animals or accident.
 *
 * @since 0.1
 */
public sealed interface TankEvent {
    /** Hour of the tank's clock. */
    double atHours();

    private static void requireHour(double atHours) {
        Require.inRange("atHours", atHours, -1e7, 1e7, "h", "give hours of the tank's clock");
    }

    private static void require(double atHours, String name, double value, double low, double high, String unit) {
        requireHour(atHours);
        Require.inRange(name, value, low, high, unit, "look at the event again");
    }

    /**
     * A meal beside the plan's rhythm, eaten whole.
     *
     * @param atHours hour
     * @param grams dry feed, 0 to 1e5 g
     */
    record Fed(double atHours, double grams) implements TankEvent {
        /** Checks the limits. */
        public Fed {
            require(atHours, "grams", grams, 0, 1e5, "g");
        }
    }

    /**
     * Too much food: most of it is left lying and its oil spreads.
     *
     * @param atHours hour
     * @param grams dry feed, 0 to 1e5 g
     * @param uneatenShare share that is left, 0 to 1
     */
    record Overfed(double atHours, double grams, double uneatenShare) implements TankEvent {
        /** Checks the limits. */
        public Overfed {
            require(atHours, "grams", grams, 0, 1e5, "g");
            require(atHours, "uneatenShare", uneatenShare, 0, 1, "");
        }
    }

    /**
     * Oil or hands in the tank: foam breaks.
     *
     * @param atHours hour
     * @param amount film breaker added, 0 to 1
     */
    record OilFilm(double atHours, double amount) implements TankEvent {
        /** Checks the limits. */
        public OilFilm {
            require(atHours, "amount", amount, 0, 1, "");
        }
    }

    /** What can make a tank foam. */
    enum Agent {
        /** A water conditioner. */
        CONDITIONER,
        /** Fresh sealant or glue. */
        SEALANT,
        /** A medication. */
        MEDICATION
    }

    /**
     * A foaming agent gets in.
     *
     * @param atHours hour
     * @param agent what it is
     * @param amount foaming agent added, 0 to 3
     */
    record FoamingAgent(double atHours, Agent agent, double amount) implements TankEvent {
        /** Checks the limits. */
        public FoamingAgent {
            Objects.requireNonNull(agent, "agent");
            require(atHours, "amount", amount, 0, 3, "");
        }
    }

    /**
     * Water poured in by hand at once; fresh water where salt water was needed is the classic error.
     *
     * @param atHours hour
     * @param litres 0 to 1e5 L
     * @param practicalSalinity of that water, 0 to 42
     */
    record Poured(double atHours, double litres, double practicalSalinity) implements TankEvent {
        /** Checks the limits. */
        public Poured {
            require(atHours, "litres", litres, 0, 1e5, "L");
            require(atHours, "practicalSalinity", practicalSalinity, 0, 42, "");
        }
    }

    /**
     * The top-off reservoir filled, perhaps with the wrong water.
     *
     * @param atHours hour
     * @param practicalSalinity of that water, 0 to 42
     */
    record ReservoirFilled(double atHours, double practicalSalinity) implements TankEvent {
        /** Checks the limits. */
        public ReservoirFilled {
            require(atHours, "practicalSalinity", practicalSalinity, 0, 42, "");
        }
    }

    /** How the top-off works. */
    enum TopOff {
        /** By its float. */
        BY_FLOAT,
        /** Not at all. */
        OFF,
        /** Without end. */
        STUCK_OPEN
    }

    /**
     * The top-off is switched, fails or is mended.
     *
     * @param atHours hour
     * @param topOff how it works from now on
     */
    record TopOffSet(double atHours, TopOff topOff) implements TankEvent {
        /** Checks the limits. */
        public TopOffSet {
            requireHour(atHours);
            Objects.requireNonNull(topOff, "topOff");
        }
    }

    /**
     * A water change: as much taken out as put in.
     *
     * @param atHours hour
     * @param litres 0 to 1e5 L
     * @param practicalSalinity of the new water, 0 to 42
     */
    record WaterChanged(double atHours, double litres, double practicalSalinity) implements TankEvent {
        /** Checks the limits. */
        public WaterChanged {
            require(atHours, "litres", litres, 0, 1e5, "L");
            require(atHours, "practicalSalinity", practicalSalinity, 0, 42, "");
        }
    }

    /**
     * The return pump is switched: off, the display drains down into the sump; on again, wet foam surges.
     *
     * @param atHours hour
     * @param on whether it runs from now on
     */
    record ReturnPump(double atHours, boolean on) implements TankEvent {
        /** Checks the limits. */
        public ReturnPump {
            requireHour(atHours);
        }
    }

    /**
     * The injector pump is switched.
     *
     * @param atHours hour
     * @param on whether it runs from now on
     */
    record InjectorPump(double atHours, boolean on) implements TankEvent {
        /** Checks the limits. */
        public InjectorPump {
            requireHour(atHours);
        }
    }

    /**
     * No mains.
     *
     * @param atHours hour
     * @param lastsHours how long, above 0 to 1000 h
     */
    record PowerCut(double atHours, double lastsHours) implements TankEvent {
        /** Checks the limits. */
        public PowerCut {
            require(atHours, "lastsHours", lastsHours, 1e-3, 1000, "h");
        }
    }

    /**
     * The end of the air line falls into water, or is lifted out.
     *
     * @param atHours hour
     * @param inWater whether it hangs in water from now on
     */
    record AirLine(double atHours, boolean inWater) implements TankEvent {
        /** Checks the limits. */
        public AirLine {
            requireHour(atHours);
        }
    }

    /**
     * The weir set by hand to a mark, with the return pump off for a moment; past its range it stops at its end.
     *
     * @param atHours hour
     * @param crestMm new mark over the chamber floor, 1 to 2000 mm
     */
    record WeirSet(double atHours, double crestMm) implements TankEvent {
        /** Checks the limits. */
        public WeirSet {
            require(atHours, "crestMm", crestMm, 1, 2000, "mm");
        }
    }

    /**
     * The weir slips against its mark.
     *
     * @param atHours hour
     * @param byMm rise of the crest, negative when it slides down, -100 to 100 mm
     */
    record WeirSlipped(double atHours, double byMm) implements TankEvent {
        /** Checks the limits. */
        public WeirSlipped {
            require(atHours, "byMm", byMm, -100, 100, "mm");
        }
    }

    /**
     * The return flow is set.
     *
     * @param atHours hour
     * @param litresPerHour with a clean strainer, 0 to 1e5 L/h
     */
    record FlowSet(double atHours, double litresPerHour) implements TankEvent {
        /** Checks the limits. */
        public FlowSet {
            require(atHours, "litresPerHour", litresPerHour, 0, 1e5, "L/h");
        }
    }

    /**
     * The air is set.
     *
     * @param atHours hour
     * @param litresPerHour clean air draw, 0 to 20000 L/h
     */
    record AirSet(double atHours, double litresPerHour) implements TankEvent {
        /** Checks the limits. */
        public AirSet {
            require(atHours, "litresPerHour", litresPerHour, 0, 20000, "L/h");
        }
    }

    /**
     * The water takes another mean temperature.
     *
     * @param atHours hour
     * @param celsius 6 to 39 C
     */
    record TemperatureSet(double atHours, double celsius) implements TankEvent {
        /** Checks the limits. */
        public TemperatureSet {
            require(atHours, "celsius", celsius, 6, 39, "\u00b0C");
        }
    }

    /**
     * The cup's vent or drain is blocked, or freed.
     *
     * @param atHours hour
     * @param pascal pressure in the cup over the room, 0 to 2000 Pa
     */
    record CupPressure(double atHours, double pascal) implements TankEvent {
        /** Checks the limits. */
        public CupPressure {
            require(atHours, "pascal", pascal, 0, 2000, "Pa");
        }
    }

    /**
     * An animal dies and is not found.
     *
     * @param atHours hour
     * @param wetGrams 0 to 1e6 g
     */
    record AnimalDied(double atHours, double wetGrams) implements TankEvent {
        /** Checks the limits. */
        public AnimalDied {
            require(atHours, "wetGrams", wetGrams, 0, 1e6, "g");
        }
    }

    /**
     * Solids are taken out: a dead animal, food left lying, dirt on the bottom.
     *
     * @param atHours hour
     * @param share of all solids in the water, 0 to 1
     */
    record SolidsRemoved(double atHours, double share) implements TankEvent {
        /** Checks the limits. */
        public SolidsRemoved {
            require(atHours, "share", share, 0, 1, "");
        }
    }

    /**
     * A part is cleaned, emptied or renewed.
     *
     * @param atHours hour
     * @param part which
     */
    record Serviced(double atHours, TankPart part) implements TankEvent {
        /** Checks the limits. */
        public Serviced {
            requireHour(atHours);
            Objects.requireNonNull(part, "part");
        }
    }

    /**
     * A part turns out to be in a given state: a hidden fault for practice.
     *
     * @param atHours hour
     * @param part which
     * @param share closed, worn, full or missing, 0 to 1
     */
    record Fouled(double atHours, TankPart part, double share) implements TankEvent {
        /** Checks the limits. */
        public Fouled {
            Objects.requireNonNull(part, "part");
            require(atHours, "share", share, 0, 1, "");
        }
    }
}
