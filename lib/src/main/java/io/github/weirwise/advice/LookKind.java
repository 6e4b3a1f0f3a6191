package io.github.weirwise.advice;

import io.github.weirwise.unit.Part;
import java.util.Optional;

/**
 * Readings that can be asked for, with the minutes they take (our own estimates).
 *
 * @since 0.1
 */
public enum LookKind {
    /** Water level in the column against the funnel base, by ruler. */
    FUNNEL_LEVEL(2),
    /** What is in the cup and since when. */
    CUP_VOLUME(2),
    /** Darkness of the skimmate in a 20 mm white vial. */
    DARKNESS(2),
    /** The foam in the neck. */
    FOAM_LOOK(1),
    /** Head of water over the crest. */
    HEAD_OVER_CREST(2),
    /** The crest against its noted height. */
    CREST_AGAINST_MARK(2),
    /** Water level outside the column. */
    OUTSIDE_LEVEL(2),
    /** Air through the line, by a meter. */
    AIR_FLOW(4),
    /** How long the foam stands with the injector off. */
    FOAM_COLLAPSE(6),
    /** Water level beyond the weir. */
    LEVEL_BEYOND_WEIR(1),
    /** Flow of the return pump. */
    RETURN_FLOW(5),
    /** Salinity of the water. */
    SALINITY(4),
    /** The air line along its whole length. */
    AIR_LINE(3, Part.AIR_LINE),
    /** Sound and strainer of the injector pump. */
    INJECTOR_PUMP(5, Part.INJECTOR_PUMP),
    /** The injector's nozzle. */
    INJECTOR_NOZZLE(8, Part.INJECTOR_NOZZLE),
    /** Film in neck and cup. */
    NECK_AND_CUP(2, Part.NECK_AND_CUP),
    /** Cup vent and drain hose. */
    CUP_VENT(2, Part.CUP_VENT),
    /** How column, funnel and cup sit. */
    SEATING(3, Part.SEATING),
    /** The filter pad. */
    FILTER_PAD(2, Part.FILTER_PAD),
    /** The return pump and its strainer. */
    RETURN_PUMP(5, Part.RETURN_PUMP),
    /** Oil or fat on the water. */
    WATER_SURFACE(1, Part.WATER_SURFACE),
    /** Fine bubbles in the water after the unit. */
    RETURN_WATER(1, Part.RETURN_WATER),
    /** Additives, medicines or sealant used of late. */
    ADDITIVES(3, Part.ADDITIVES);

    private final int minutes;
    private final Part part;

    LookKind(int minutes) {
        this(minutes, null);
    }

    LookKind(int minutes, Part part) {
        this.minutes = minutes;
        this.part = part;
    }

    /** Minutes it takes. */
    public int minutes() {
        return minutes;
    }

    /** Whether it is part of every visit anyway. */
    boolean routine() {
        return switch (this) {
            case FUNNEL_LEVEL, CUP_VOLUME, DARKNESS, FOAM_LOOK -> true;
            default -> false;
        };
    }

    /** Whether hands go into the water for it, so that pumps and heater are unplugged first. */
    public boolean handsInWater() {
        return switch (this) {
            case CREST_AGAINST_MARK,
                    FOAM_COLLAPSE,
                    INJECTOR_PUMP,
                    INJECTOR_NOZZLE,
                    NECK_AND_CUP,
                    SEATING,
                    RETURN_PUMP -> true;
            case FUNNEL_LEVEL,
                    CUP_VOLUME,
                    DARKNESS,
                    FOAM_LOOK,
                    HEAD_OVER_CREST,
                    OUTSIDE_LEVEL,
                    AIR_FLOW,
                    LEVEL_BEYOND_WEIR,
                    RETURN_FLOW,
                    SALINITY,
                    AIR_LINE,
                    CUP_VENT,
                    FILTER_PAD,
                    WATER_SURFACE,
                    RETURN_WATER,
                    ADDITIVES -> false;
        };
    }

    /** The part looked at, when the reading is an inspection. */
    public Optional<Part> part() {
        return Optional.ofNullable(part);
    }
}
