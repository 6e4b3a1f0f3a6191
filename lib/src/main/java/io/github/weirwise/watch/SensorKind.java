package io.github.weirwise.watch;

import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Unit;
import java.util.function.DoubleFunction;

/**
 * What a sensor measures, in which unit, and how large a change is worth telling: about the scatter of one careful reading
 * (common practice, from memory).
 *
 * @since 0.1
 */
public enum SensorKind {
    /** Water level in the bubbly column over the funnel base, mm, -300 to 500. */
    FUNNEL_LEVEL(Observation.FunnelLevel::new, 2, 0, Unit.MILLIMETRE, true),
    /** Water level outside the column over the funnel base, mm, -500 to 500. */
    OUTSIDE_LEVEL(Observation.OutsideLevel::new, 2, 0, Unit.MILLIMETRE, true),
    /** Head of water over the weir crest, mm, 0 to 300. */
    HEAD_OVER_CREST(Observation.HeadOverCrest::new, 2, 0, Unit.MILLIMETRE, true),
    /** Water level on the biofilter side over the crest, mm, -1000 to 300. */
    LEVEL_BEYOND_WEIR(Observation.LevelBeyondWeir::new, 5, 0, Unit.MILLIMETRE, true),
    /** Air through the air line, L/h, 0 to 20000. */
    AIR_FLOW(Observation.AirFlow::new, 2, 0.08, Unit.LITRE_PER_HOUR, true),
    /** Flow of the return pump, L/h, 0 to 100000. */
    RETURN_FLOW(Observation.ReturnFlow::new, 20, 0.08, Unit.LITRE_PER_HOUR, true),
    /** Practical salinity, 0 to 42. */
    SALINITY(Observation.Salinity::new, 0.7, 0, Unit.SALINITY, false),
    /** Water temperature, Celsius, 5 to 40. */
    WATER_TEMPERATURE(Observation.WaterTemperature::new, 1, 0, Unit.CELSIUS, false);

    private final DoubleFunction<Observation> observation;
    private final double least;
    private final double share;
    private final Unit unit;
    private final boolean flickers;

    SensorKind(DoubleFunction<Observation> observation, double least, double share, Unit unit, boolean flickers) {
        this.unit = unit;
        this.flickers = flickers;
        this.observation = observation;
        this.least = least;
        this.share = share;
    }

    /**
     * A value of this kind as an observation.
     *
     * @throws io.github.weirwise.report.OutOfRangeException if no sound sensor shows such a value
     */
    public Observation observation(double value) {
        return observation.apply(value);
    }

    /** The smallest change from a value that is worth a reading of its own, in the kind's unit. */
    public double worthTelling(double value) {
        return Math.max(least, share * Math.abs(value));
    }

    /** The unit of its values. */
    public Unit unit() {
        return unit;
    }

    /** Whether a sound sensor of this kind never says the same to the last digit for long. */
    boolean flickers() {
        return flickers;
    }

    /** The sensor in words. */
    public Phrase words() {
        return Phrase.of("watch.kind." + name());
    }
}
