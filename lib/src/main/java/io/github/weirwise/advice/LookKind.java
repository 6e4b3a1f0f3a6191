package io.github.weirwise.advice;

import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Work;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Readings that can be asked for, with the minutes they take (our own estimates).
 *
 * @since 0.1
 */
public enum LookKind {
    /** Water level in the column against the funnel base, by ruler. */
    FUNNEL_LEVEL(Instrument.FUNNEL_LEVEL),
    /** What is in the cup and since when. */
    CUP_VOLUME(Instrument.CUP_VOLUME),
    /** Darkness of the skimmate in a 20 mm white vial. */
    DARKNESS(Instrument.DARKNESS),
    /** The foam in the neck. */
    FOAM_LOOK(Instrument.FOAM_LOOK),
    /** Head of water over the crest. */
    HEAD_OVER_CREST(Instrument.HEAD_OVER_CREST),
    /** The crest against its noted height. */
    CREST_AGAINST_MARK(Instrument.CREST_AGAINST_MARK, true),
    /** Water level outside the column. */
    OUTSIDE_LEVEL(Instrument.OUTSIDE_LEVEL),
    /** Air through the line, by a meter. */
    AIR_FLOW(Instrument.AIR_FLOW),
    /** How long the foam stands with the injector off. */
    FOAM_COLLAPSE(Instrument.FOAM_COLLAPSE, true),
    /** How fast the foam creeps up the neck. */
    FOAM_CREEP(Instrument.FOAM_CREEP),
    /** Water level beyond the weir. */
    LEVEL_BEYOND_WEIR(Instrument.LEVEL_BEYOND_WEIR),
    /** Flow of the return pump. */
    RETURN_FLOW(Instrument.RETURN_FLOW),
    /** Salinity of the water. */
    SALINITY(Instrument.SALINITY),
    /** The air line along its whole length. */
    AIR_LINE(3, Part.AIR_LINE),
    /** Sound and strainer of the injector pump. */
    INJECTOR_PUMP(5, Part.INJECTOR_PUMP, true),
    /** The injector's nozzle. */
    INJECTOR_NOZZLE(8, Part.INJECTOR_NOZZLE, true),
    /** Film in neck and cup. */
    NECK_AND_CUP(2, Part.NECK_AND_CUP, true),
    /** Cup vent and drain hose. */
    CUP_VENT(2, Part.CUP_VENT),
    /** How column, funnel and cup sit. */
    SEATING(3, Part.SEATING, true),
    /** The filter pad. */
    FILTER_PAD(2, Part.FILTER_PAD),
    /** The return pump and its strainer. */
    RETURN_PUMP(5, Part.RETURN_PUMP, true),
    /** Oil or fat on the water. */
    WATER_SURFACE(1, Part.WATER_SURFACE),
    /** Fine bubbles in the water after the unit. */
    RETURN_WATER(1, Part.RETURN_WATER),
    /** Additives, medicines or sealant used of late. */
    ADDITIVES(3, Part.ADDITIVES);

    private final int minutes;
    private final Instrument instrument;
    private final Part part;
    private final boolean handsInWater;

    LookKind(Instrument instrument) {
        this(instrument, false);
    }

    LookKind(Instrument instrument, boolean handsInWater) {
        this(instrument.minutes(), instrument, null, handsInWater);
    }

    LookKind(int minutes, Part part) {
        this(minutes, part, false);
    }

    LookKind(int minutes, Part part, boolean handsInWater) {
        this(minutes, null, part, handsInWater);
    }

    LookKind(int minutes, Instrument instrument, Part part, boolean handsInWater) {
        this.minutes = minutes;
        this.instrument = instrument;
        this.part = part;
        this.handsInWater = handsInWater;
    }

    /** Minutes it takes. */
    public int minutes() {
        return minutes;
    }

    /** Whether it is part of every visit anyway. */
    boolean routine() {
        return this == FUNNEL_LEVEL || this == CUP_VOLUME || this == DARKNESS || this == FOAM_LOOK;
    }

    /** Whether hands go into the water for it, so that pumps and heater are unplugged first. */
    public boolean handsInWater() {
        return handsInWater;
    }

    /** The part looked at, when the reading is an inspection. */
    public Optional<Part> part() {
        return Optional.ofNullable(part);
    }

    /** The instrument read, when it is not an inspection. */
    public Optional<Instrument> instrument() {
        return Optional.ofNullable(instrument);
    }

    /** The observations that record it, in the order of their instruments; an inspection for a look at a part. */
    public List<Class<? extends Observation>> observations() {
        if (part != null) {
            return List.of(Observation.Inspection.class);
        }
        return Arrays.stream(Instrument.values())
                .filter(row -> row == instrument || this == DARKNESS && row == Instrument.DARKNESS_MATCH)
                .<Class<? extends Observation>>map(Instrument::kind)
                .toList();
    }

    /** Parts whose fault it can show plainly enough to act on. */
    Set<Part> tells() {
        if (part != null) {
            return part.work() == Work.NONE ? Set.of() : Set.of(part);
        }
        return instrument == Instrument.HEAD_OVER_CREST ? Set.of(Part.RETURN_PUMP) : instrument.measures();
    }
}
