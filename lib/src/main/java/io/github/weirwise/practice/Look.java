package io.github.weirwise.practice;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.report.Phrase;
import java.util.Optional;

/**
 * What a trainee can look at: all that the adviser asks for, by the same names (see {@link LookKind}), and what a round of the
 * house has besides. A look takes minutes and gives evidence, not an answer.
 */
public enum Look {
    /** The usual round: level, cup, darkness and foam in one go; empties the cup. */
    ROUND(6),
    /** As {@link LookKind#FUNNEL_LEVEL}. */
    FUNNEL_LEVEL,
    /** As {@link LookKind#CUP_VOLUME}. */
    CUP_VOLUME,
    /** As {@link LookKind#DARKNESS}. */
    DARKNESS,
    /** As {@link LookKind#FOAM_LOOK}. */
    FOAM_LOOK,
    /** As {@link LookKind#HEAD_OVER_CREST}. */
    HEAD_OVER_CREST,
    /** As {@link LookKind#CREST_AGAINST_MARK}. */
    CREST_AGAINST_MARK,
    /** As {@link LookKind#OUTSIDE_LEVEL}. */
    OUTSIDE_LEVEL,
    /** As {@link LookKind#AIR_FLOW}. */
    AIR_FLOW,
    /** As {@link LookKind#FOAM_COLLAPSE}. */
    FOAM_COLLAPSE,
    /** As {@link LookKind#FOAM_CREEP}. */
    FOAM_CREEP,
    /** As {@link LookKind#LEVEL_BEYOND_WEIR}. */
    LEVEL_BEYOND_WEIR,
    /** As {@link LookKind#RETURN_FLOW}. */
    RETURN_FLOW,
    /** As {@link LookKind#SALINITY}. */
    SALINITY,
    /** As {@link LookKind#AIR_LINE}. */
    AIR_LINE,
    /** As {@link LookKind#INJECTOR_PUMP}. */
    INJECTOR_PUMP,
    /** As {@link LookKind#INJECTOR_NOZZLE}. */
    INJECTOR_NOZZLE,
    /** As {@link LookKind#NECK_AND_CUP}. */
    NECK_AND_CUP,
    /** As {@link LookKind#CUP_VENT}. */
    CUP_VENT,
    /** As {@link LookKind#SEATING}. */
    SEATING,
    /** As {@link LookKind#FILTER_PAD}. */
    FILTER_PAD,
    /** As {@link LookKind#RETURN_PUMP}. */
    RETURN_PUMP,
    /** As {@link LookKind#WATER_SURFACE}. */
    WATER_SURFACE,
    /** As {@link LookKind#RETURN_WATER}. */
    RETURN_WATER,
    /** As {@link LookKind#ADDITIVES}. */
    ADDITIVES,
    /** Sump level and how deep the media stand in water. */
    SUMP_LEVEL(2),
    /** Water temperature. */
    TEMPERATURE(1),
    /** Ammonia, nitrite and oxygen by a test kit. */
    WATER_TEST(15);

    private final int minutes;
    private final Optional<LookKind> kind;

    Look(int minutes) {
        this.minutes = minutes;
        kind = Optional.empty();
    }

    Look() {
        LookKind same = LookKind.valueOf(name());
        minutes = same.minutes();
        kind = Optional.of(same);
    }

    /** Minutes it takes unless a scenario says otherwise (our own estimates). */
    public int minutes() {
        return minutes;
    }

    /** Whether the cup is emptied to measure it. */
    boolean emptiesTheCup() {
        return this == ROUND || this == CUP_VOLUME;
    }

    /** The adviser's name for it, if it has one. */
    public Optional<LookKind> kind() {
        return kind;
    }

    /** The look that answers what the adviser asks for. */
    public static Look of(LookKind kind) {
        return valueOf(kind.name());
    }

    /** What is looked at, in words. */
    public Phrase words() {
        return Phrase.of("practice.look." + name());
    }
}
