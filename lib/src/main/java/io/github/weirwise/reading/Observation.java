package io.github.weirwise.reading;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.Objects;

/**
 * One thing seen or measured. Heights are millimetres, amounts millilitres; nothing here is corrected or interpreted.
 *
 * @since 0.1
 */
public sealed interface Observation {

    /**
     * Water level in the bubbly column by a ruler on the outside, over the funnel base; in bubbly water a person reads it
     * to 2 or 3 mm with a bias of their own (common practice).
     *
     * @param mm over the funnel base, negative below, -300 to 500 mm
     */
    record FunnelLevel(double mm) implements Observation {
        static final Limit MM = Limit.of("mm", -300, 500, Unit.MILLIMETRE, "reading.try.measureFromTheFunnel");

        /** Checks the range. */
        public FunnelLevel {
            MM.check(mm);
        }
    }

    /**
     * Skimmate collected since the cup was last emptied.
     *
     * @param ml amount, 0 to 100000 mL
     * @param hours how long it took, above 0 to 1000 h
     * @param full whether the cup had run full, so that more may have come
     */
    record CupVolume(double ml, double hours, boolean full) implements Observation {
        static final Limit ML = Limit.of("ml", 0, 100000, Unit.MILLILITRE, "reading.try.measureWhatIsIn");
        static final Limit HOURS = Limit.of("hours", 0.05, 1000, Unit.HOUR, "reading.try.giveTheHoursSince");

        /** Checks the ranges. */
        public CupVolume {
            ML.check(ml);
            HOURS.check(hours);
        }

        /** The rate over the interval, mL/day; a lower bound when {@link #full}. */
        public double mlPerDay() {
            return ml * 24 / hours;
        }

        /**
         * Whether a unit's cup can have held as much; a drained one passes anything on. A cup emptied in between may be told
         * twice over, more than that is a slip of the pen or another unit of measure.
         */
        public boolean possibleIn(SkimmerUnit unit) {
            return unit.cupDrainLitresPerHour().isPresent() || ml <= 2 * unit.cupMl();
        }
    }

    /**
     * Darkness of the skimmate in a 20 mm white vial, by words.
     *
     * @param word the nearest of five
     */
    record Darkness(DarknessWord word) implements Observation {
        /** Rejects null. */
        public Darkness {
            Objects.requireNonNull(word, "word");
        }
    }

    /**
     * Darkness of the skimmate by a swatch row or an instrument.
     *
     * @param ptCo platinum-cobalt units, 0 to 100000
     */
    record DarknessMatch(double ptCo) implements Observation {
        static final Limit PT_CO = Limit.of("ptCo", 0, 100000, Unit.PLATINUM_COBALT, "reading.try.compareInA20");

        /** Checks the range. */
        public DarknessMatch {
            PT_CO.check(ptCo);
        }
    }

    /**
     * How the foam in the neck looks.
     *
     * @param look the nearest of six
     */
    record FoamLook(FoamLookWord look) implements Observation {
        /** Rejects null. */
        public FoamLook {
            Objects.requireNonNull(look, "look");
        }
    }

    /**
     * Head of water over the weir crest, measured upstream where the surface is still flat; tells the flow.
     *
     * @param mm 0 to 300 mm
     */
    record HeadOverCrest(double mm) implements Observation {
        static final Limit MM = Limit.of("mm", 0, 300, Unit.MILLIMETRE, "reading.try.measureFromTheCrest");

        /** Checks the range. */
        public HeadOverCrest {
            MM.check(mm);
        }
    }

    /**
     * Where the crest really stands against the height that the journal says; tells a slipped weir.
     *
     * @param mm real minus noted, -100 to 100 mm
     */
    record CrestAgainstMark(double mm) implements Observation {
        static final Limit MM = Limit.of("mm", -100, 100, Unit.MILLIMETRE, "reading.try.measureTheCrestFrom");

        /** Checks the range. */
        public CrestAgainstMark {
            MM.check(mm);
        }
    }

    /**
     * Water level in the chamber outside the column, over the funnel base; with the level inside it tells the gas lift
     * against the foam's weight.
     *
     * @param mm over the funnel base, negative below, -500 to 500 mm
     */
    record OutsideLevel(double mm) implements Observation {
        static final Limit MM = Limit.of("mm", -500, 500, Unit.MILLIMETRE, "reading.try.measureOutsideTheColumn");

        /** Checks the range. */
        public OutsideLevel {
            MM.check(mm);
        }
    }

    /**
     * Air through the air line by a meter.
     *
     * @param litresPerHour 0 to 20000 L/h
     */
    record AirFlow(double litresPerHour) implements Observation {
        static final Limit LITRES_PER_HOUR =
                Limit.of("litresPerHour", 0, 20000, Unit.LITRE_PER_HOUR, "reading.try.readTheMeterIn");

        /** Checks the range. */
        public AirFlow {
            LITRES_PER_HOUR.check(litresPerHour);
        }
    }

    /**
     * Time for the foam in the neck to fall to half with the injector off; tells the life of the foam.
     *
     * @param seconds 1 to 36000 s
     */
    record FoamCollapse(double seconds) implements Observation {
        static final Limit SECONDS = Limit.of("seconds", 1, 36000, Unit.SECOND, "reading.try.timeUntilTheFoam");

        /** Checks the range. */
        public FoamCollapse {
            SECONDS.check(seconds);
        }
    }

    /**
     * Speed of the foam's top in the neck by ruler and watch; times the neck's area over the air drawn it is the share of the
     * gas that reaches the lip as foam.
     *
     * @param mmPerMinute 0 to 5000 mm/min
     */
    record FoamCreep(double mmPerMinute) implements Observation {
        static final Limit MM_PER_MINUTE =
                Limit.of("mmPerMinute", 0, 5000, Unit.MILLIMETRE_PER_MINUTE, "reading.try.timeHowLongThe");

        /** Checks the range. */
        public FoamCreep {
            MM_PER_MINUTE.check(mmPerMinute);
        }
    }

    /**
     * Water level on the biofilter side of the weir against the crest; tells a drowned weir.
     *
     * @param mm over the crest, negative below, -1000 to 300 mm
     */
    record LevelBeyondWeir(double mm) implements Observation {
        static final Limit MM = Limit.of("mm", -1000, 300, Unit.MILLIMETRE, "reading.try.measureFromTheCrest2");

        /** Checks the range. */
        public LevelBeyondWeir {
            MM.check(mm);
        }
    }

    /**
     * Flow of the return pump by a meter or by timing a vessel.
     *
     * @param litresPerHour 0 to 100000 L/h
     */
    record ReturnFlow(double litresPerHour) implements Observation {
        static final Limit LITRES_PER_HOUR =
                Limit.of("litresPerHour", 0, 100000, Unit.LITRE_PER_HOUR, "reading.try.timeHowLongA");

        /** Checks the range. */
        public ReturnFlow {
            LITRES_PER_HOUR.check(litresPerHour);
        }
    }

    /**
     * Practical salinity.
     *
     * @param practicalSalinity 0 to 42
     */
    record Salinity(double practicalSalinity) implements Observation {
        static final Limit PRACTICAL_SALINITY =
                Limit.of("practicalSalinity", 0, 42, Unit.SALINITY, "reading.try.giveSalinityNotSpecific");

        /** Checks the range. */
        public Salinity {
            PRACTICAL_SALINITY.check(practicalSalinity);
        }
    }

    /**
     * Water temperature.
     *
     * @param celsius 5 to 40 C
     */
    record WaterTemperature(double celsius) implements Observation {
        static final Limit CELSIUS = Limit.of("celsius", 5, 40, Unit.CELSIUS, "reading.try.giveTheTemperatureIn");

        /** Checks the range. */
        public WaterTemperature {
            CELSIUS.check(celsius);
        }
    }

    /**
     * A look at a part.
     *
     * @param part what was looked at
     * @param finding how it was found
     */
    record Inspection(Part part, Finding finding) implements Observation {
        /** Rejects nulls. */
        public Inspection {
            Objects.requireNonNull(part, "part");
            Objects.requireNonNull(finding, "finding");
        }
    }
}
