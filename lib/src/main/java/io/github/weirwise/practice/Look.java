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
    FUNNEL_LEVEL,
    CUP_VOLUME,
    DARKNESS,
    FOAM_LOOK,
    HEAD_OVER_CREST,
    CREST_AGAINST_MARK,
    OUTSIDE_LEVEL,
    AIR_FLOW,
    FOAM_COLLAPSE,
    FOAM_CREEP,
    LEVEL_BEYOND_WEIR,
    RETURN_FLOW,
    SALINITY,
    AIR_LINE,
    INJECTOR_PUMP,
    INJECTOR_NOZZLE,
    NECK_AND_CUP,
    CUP_VENT,
    SEATING,
    FILTER_PAD,
    RETURN_PUMP,
    WATER_SURFACE,
    RETURN_WATER,
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
