package io.github.weirwise.tank;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import java.util.Objects;

/**
 * Something that happens to a tank at one hour of its clock: by hands, animals or accident.
 */
public sealed interface TankEvent {
    /** Hour of the tank's clock. */
    double atHours();

    private static Limit limit(String name, double low, double high, Unit unit) {
        return Limit.of(name, low, high, unit, "tank.try.lookAtTheEvent");
    }

    private static void requireHour(double atHours) {
        TankClock.AT_HOURS.check(atHours);
    }

    /**
     * A meal beside the plan's rhythm, eaten whole.
     *
     * @param atHours hour
     * @param grams dry feed, 0 to 1e5 g
     */
    record Fed(double atHours, double grams) implements TankEvent {
        private static final Limit GRAMS = limit("grams", 0, 1e5, Unit.GRAM);

        /** Checks the limits. */
        public Fed {
            requireHour(atHours);
            GRAMS.check(grams);
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
        private static final Limit GRAMS = limit("grams", 0, 1e5, Unit.GRAM);
        private static final Limit UNEATEN_SHARE = limit("uneatenShare", 0, 1, Unit.PLAIN);

        /** Checks the limits. */
        public Overfed {
            requireHour(atHours);
            GRAMS.check(grams);
            UNEATEN_SHARE.check(uneatenShare);
        }
    }

    /**
     * Oil or hands in the tank: foam breaks.
     *
     * @param atHours hour
     * @param amount film breaker added, 0 to 1
     */
    record OilFilm(double atHours, double amount) implements TankEvent {
        private static final Limit AMOUNT = limit("amount", 0, 1, Unit.PLAIN);

        /** Checks the limits. */
        public OilFilm {
            requireHour(atHours);
            AMOUNT.check(amount);
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
        private static final Limit AMOUNT = limit("amount", 0, 3, Unit.PLAIN);

        /** Checks the limits. */
        public FoamingAgent {
            Objects.requireNonNull(agent, "agent");
            requireHour(atHours);
            AMOUNT.check(amount);
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
        private static final Limit LITRES = limit("litres", 0, 1e5, Unit.LITRE);
        private static final Limit PRACTICAL_SALINITY = limit("practicalSalinity", 0, 42, Unit.SALINITY);

        /** Checks the limits. */
        public Poured {
            requireHour(atHours);
            LITRES.check(litres);
            PRACTICAL_SALINITY.check(practicalSalinity);
        }
    }

    /**
     * The top-off reservoir filled, perhaps with the wrong water.
     *
     * @param atHours hour
     * @param practicalSalinity of that water, 0 to 42
     */
    record ReservoirFilled(double atHours, double practicalSalinity) implements TankEvent {
        private static final Limit PRACTICAL_SALINITY = limit("practicalSalinity", 0, 42, Unit.SALINITY);

        /** Checks the limits. */
        public ReservoirFilled {
            requireHour(atHours);
            PRACTICAL_SALINITY.check(practicalSalinity);
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
        private static final Limit LITRES = limit("litres", 0, 1e5, Unit.LITRE);
        private static final Limit PRACTICAL_SALINITY = limit("practicalSalinity", 0, 42, Unit.SALINITY);

        /** Checks the limits. */
        public WaterChanged {
            requireHour(atHours);
            LITRES.check(litres);
            PRACTICAL_SALINITY.check(practicalSalinity);
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
        private static final Limit LASTS_HOURS = limit("lastsHours", 1e-3, 1000, Unit.HOUR);

        /** Checks the limits. */
        public PowerCut {
            requireHour(atHours);
            LASTS_HOURS.check(lastsHours);
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
     * The weir set by hand to a mark while the pumps run: the foam falls back a little; past its range it stops at its end.
     *
     * @param atHours hour
     * @param crestMm new mark over the chamber floor, 1 to 2000 mm
     */
    record WeirSet(double atHours, double crestMm) implements TankEvent {
        private static final Limit CREST_MM = limit("crestMm", 1, 2000, Unit.MILLIMETRE);

        /** Checks the limits. */
        public WeirSet {
            requireHour(atHours);
            CREST_MM.check(crestMm);
        }
    }

    /**
     * The weir slips against its mark.
     *
     * @param atHours hour
     * @param byMm rise of the crest, negative when it slides down, -100 to 100 mm
     */
    record WeirSlipped(double atHours, double byMm) implements TankEvent {
        private static final Limit BY_MM = limit("byMm", -100, 100, Unit.MILLIMETRE);

        /** Checks the limits. */
        public WeirSlipped {
            requireHour(atHours);
            BY_MM.check(byMm);
        }
    }

    /**
     * The return flow is set.
     *
     * @param atHours hour
     * @param litresPerHour with a clean strainer, 0 to 1e5 L/h
     */
    record FlowSet(double atHours, double litresPerHour) implements TankEvent {
        private static final Limit LITRES_PER_HOUR = limit("litresPerHour", 0, 1e5, Unit.LITRE_PER_HOUR);

        /** Checks the limits. */
        public FlowSet {
            requireHour(atHours);
            LITRES_PER_HOUR.check(litresPerHour);
        }
    }

    /**
     * The air is set.
     *
     * @param atHours hour
     * @param litresPerHour clean air draw, 0 to 20000 L/h
     */
    record AirSet(double atHours, double litresPerHour) implements TankEvent {
        private static final Limit LITRES_PER_HOUR = limit("litresPerHour", 0, 20000, Unit.LITRE_PER_HOUR);

        /** Checks the limits. */
        public AirSet {
            requireHour(atHours);
            LITRES_PER_HOUR.check(litresPerHour);
        }
    }

    /**
     * The water takes another mean temperature.
     *
     * @param atHours hour
     * @param celsius 6 to 39 C
     */
    record TemperatureSet(double atHours, double celsius) implements TankEvent {
        private static final Limit CELSIUS = limit("celsius", 6, 39, Unit.CELSIUS);

        /** Checks the limits. */
        public TemperatureSet {
            requireHour(atHours);
            CELSIUS.check(celsius);
        }
    }

    /**
     * The cup's vent or drain is blocked, or freed.
     *
     * @param atHours hour
     * @param pascal pressure in the cup over the room, 0 to 2000 Pa
     */
    record CupPressure(double atHours, double pascal) implements TankEvent {
        private static final Limit PASCAL = limit("pascal", 0, 2000, Unit.PASCAL);

        /** Checks the limits. */
        public CupPressure {
            requireHour(atHours);
            PASCAL.check(pascal);
        }
    }

    /**
     * An animal dies and is not found.
     *
     * @param atHours hour
     * @param wetGrams 0 to 1e6 g
     */
    record AnimalDied(double atHours, double wetGrams) implements TankEvent {
        private static final Limit WET_GRAMS = limit("wetGrams", 0, 1e6, Unit.GRAM);

        /** Checks the limits. */
        public AnimalDied {
            requireHour(atHours);
            WET_GRAMS.check(wetGrams);
        }
    }

    /**
     * Solids are taken out: a dead animal, food left lying, dirt on the bottom.
     *
     * @param atHours hour
     * @param share of all solids in the water, 0 to 1
     */
    record SolidsRemoved(double atHours, double share) implements TankEvent {
        private static final Limit SHARE = limit("share", 0, 1, Unit.PLAIN);

        /** Checks the limits. */
        public SolidsRemoved {
            requireHour(atHours);
            SHARE.check(share);
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
        private static final Limit SHARE = limit("share", 0, 1, Unit.PLAIN);

        /** Checks the limits. */
        public Fouled {
            Objects.requireNonNull(part, "part");
            requireHour(atHours);
            SHARE.check(share);
        }
    }
}
