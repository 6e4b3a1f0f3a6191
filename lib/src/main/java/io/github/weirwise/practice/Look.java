package io.github.weirwise.practice;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.report.Phrase;
import java.util.Arrays;
import java.util.Optional;

/**
 * What a trainee can look at. A look takes minutes and gives evidence, not an answer.
 */
public enum Look {
    /** The usual round: level, cup, darkness and foam in one go; empties the cup. */
    ROUND(6),
    /** Level in the column by ruler. */
    FUNNEL_LEVEL(LookKind.FUNNEL_LEVEL),
    /** The cup, measured and emptied. */
    CUP_VOLUME(LookKind.CUP_VOLUME),
    /** Darkness of what is in the cup. */
    DARKNESS(LookKind.DARKNESS),
    /** The foam in the neck. */
    FOAM_LOOK(LookKind.FOAM_LOOK),
    /** Head over the crest. */
    HEAD_OVER_CREST(LookKind.HEAD_OVER_CREST),
    /** The crest against its mark. */
    CREST_AGAINST_MARK(LookKind.CREST_AGAINST_MARK),
    /** Level outside the column. */
    OUTSIDE_LEVEL(LookKind.OUTSIDE_LEVEL),
    /** Air by a meter. */
    AIR_FLOW(LookKind.AIR_FLOW),
    /** How long the foam stands with the injector off. */
    FOAM_COLLAPSE(LookKind.FOAM_COLLAPSE),
    /** How fast the foam creeps up the neck. */
    FOAM_CREEP(LookKind.FOAM_CREEP),
    /** Level beyond the weir. */
    LEVEL_BEYOND_WEIR(LookKind.LEVEL_BEYOND_WEIR),
    /** Flow of the return pump. */
    RETURN_FLOW(LookKind.RETURN_FLOW),
    /** Salinity. */
    SALINITY(LookKind.SALINITY),
    /** The air line. */
    AIR_LINE(LookKind.AIR_LINE),
    /** The injector pump. */
    INJECTOR_PUMP(LookKind.INJECTOR_PUMP),
    /** The injector's nozzle. */
    INJECTOR_NOZZLE(LookKind.INJECTOR_NOZZLE),
    /** Neck and cup. */
    NECK_AND_CUP(LookKind.NECK_AND_CUP),
    /** Cup vent and drain hose. */
    CUP_VENT(LookKind.CUP_VENT),
    /** How column, funnel and cup sit. */
    SEATING(LookKind.SEATING),
    /** The filter pad. */
    FILTER_PAD(LookKind.FILTER_PAD),
    /** The return pump and its strainer. */
    RETURN_PUMP(LookKind.RETURN_PUMP),
    /** Oil or fat on the water. */
    WATER_SURFACE(LookKind.WATER_SURFACE),
    /** Fine bubbles in the water after the unit. */
    RETURN_WATER(LookKind.RETURN_WATER),
    /** Bottles and notes at the tank. */
    ADDITIVES(LookKind.ADDITIVES),
    /** Sump level and how deep the media stand in water. */
    SUMP_LEVEL(2),
    /** Water temperature. */
    TEMPERATURE(1),
    /** Ammonia, nitrite and oxygen by a test kit. */
    WATER_TEST(15);

    private final int minutes;
    private final LookKind kind;

    Look(int minutes) {
        this.minutes = minutes;
        this.kind = null;
    }

    Look(LookKind kind) {
        this.minutes = kind.minutes();
        this.kind = kind;
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
        return Optional.ofNullable(kind);
    }

    /** The look that answers what the adviser asks for. */
    public static Look of(LookKind kind) {
        return Arrays.stream(values())
                .filter(each -> each.kind == kind)
                .findFirst()
                .orElseThrow();
    }

    /** What is looked at, in words. */
    public Phrase words() {
        return Phrase.of("practice.look." + name());
    }
}
