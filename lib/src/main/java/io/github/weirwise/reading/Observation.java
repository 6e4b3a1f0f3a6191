package io.github.weirwise.reading;

import io.github.weirwise.report.Require;
import io.github.weirwise.unit.Part;
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
        /** Checks the range. */
        public FunnelLevel {
            Require.inRange("mm", mm, -300, 500, "mm", "measure from the funnel base, up is positive");
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
        /** Checks the ranges. */
        public CupVolume {
            Require.inRange("ml", ml, 0, 100000, "mL", "measure what is in the cup");
            Require.inRange("hours", hours, 0.05, 1000, "h", "give the hours since the cup was emptied");
        }

        /** The rate over the interval, mL/day; a lower bound when {@link #full}. */
        public double mlPerDay() {
            return ml * 24 / hours;
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
        /** Checks the range. */
        public DarknessMatch {
            Require.inRange("ptCo", ptCo, 0, 100000, "Pt-Co", "compare in a 20 mm white vial");
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
        /** Checks the range. */
        public HeadOverCrest {
            Require.inRange("mm", mm, 0, 300, "mm", "measure from the crest up to the flat water before it");
        }
    }

    /**
     * Where the crest really stands against the height that the journal says; tells a slipped weir.
     *
     * @param mm real minus noted, -100 to 100 mm
     */
    record CrestAgainstMark(double mm) implements Observation {
        /** Checks the range. */
        public CrestAgainstMark {
            Require.inRange("mm", mm, -100, 100, "mm", "measure the crest from the chamber floor and subtract");
        }
    }

    /**
     * Water level in the chamber outside the column, over the funnel base; with the level inside it tells the gas lift
     * against the foam's weight.
     *
     * @param mm over the funnel base, negative below, -500 to 500 mm
     */
    record OutsideLevel(double mm) implements Observation {
        /** Checks the range. */
        public OutsideLevel {
            Require.inRange("mm", mm, -500, 500, "mm", "measure outside the column from the height of the funnel base");
        }
    }

    /**
     * Air through the air line by a meter.
     *
     * @param litresPerHour 0 to 20000 L/h
     */
    record AirFlow(double litresPerHour) implements Observation {
        /** Checks the range. */
        public AirFlow {
            Require.inRange("litresPerHour", litresPerHour, 0, 20000, "L/h", "read the meter in litres per hour");
        }
    }

    /**
     * Time for the foam in the neck to fall to half with the injector off; tells the life of the foam.
     *
     * @param seconds 1 to 36000 s
     */
    record FoamCollapse(double seconds) implements Observation {
        /** Checks the range. */
        public FoamCollapse {
            Require.inRange("seconds", seconds, 1, 36000, "s", "time until the foam stands half as high");
        }
    }

    /**
     * Speed of the foam's top in the neck by ruler and watch; times the neck's area over the air drawn it is the share of the
     * gas that reaches the lip as foam.
     *
     * @param mmPerMinute 0 to 5000 mm/min
     */
    record FoamCreep(double mmPerMinute) implements Observation {
        /** Checks the range. */
        public FoamCreep {
            Require.inRange("mmPerMinute", mmPerMinute, 0, 5000, "mm/min", "time how long the foam takes for 10 mm");
        }
    }

    /**
     * Water level on the biofilter side of the weir against the crest; tells a drowned weir.
     *
     * @param mm over the crest, negative below, -1000 to 300 mm
     */
    record LevelBeyondWeir(double mm) implements Observation {
        /** Checks the range. */
        public LevelBeyondWeir {
            Require.inRange("mm", mm, -1000, 300, "mm", "measure from the crest, down is negative");
        }
    }

    /**
     * Flow of the return pump by a meter or by timing a vessel.
     *
     * @param litresPerHour 0 to 100000 L/h
     */
    record ReturnFlow(double litresPerHour) implements Observation {
        /** Checks the range. */
        public ReturnFlow {
            Require.inRange("litresPerHour", litresPerHour, 0, 100000, "L/h", "time how long a known vessel takes");
        }
    }

    /**
     * Practical salinity.
     *
     * @param practicalSalinity 0 to 42
     */
    record Salinity(double practicalSalinity) implements Observation {
        /** Checks the range. */
        public Salinity {
            Require.inRange("practicalSalinity", practicalSalinity, 0, 42, "", "give salinity, not specific gravity");
        }
    }

    /**
     * Water temperature.
     *
     * @param celsius 5 to 40 C
     */
    record WaterTemperature(double celsius) implements Observation {
        /** Checks the range. */
        public WaterTemperature {
            Require.inRange("celsius", celsius, 5, 40, "\u00b0C", "give the temperature in Celsius");
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
