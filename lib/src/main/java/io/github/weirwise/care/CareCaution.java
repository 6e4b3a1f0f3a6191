package io.github.weirwise.care;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Severity;
import io.github.weirwise.report.Warning;
import java.util.List;
import java.util.stream.Stream;

/**
 * What can go wrong while a unit is looked after; common practice and usual electrical advice, from memory.
 *
 * @since 0.1
 */
public enum CareCaution {
    /** Unplug before hands go in. */
    UNPLUG(Severity.DANGER),
    /** Runaway skimmate with an automatic top-off. */
    RUNAWAY(Severity.DANGER),
    /** An air line can siphon while the pump is off. */
    AIR_LINE(Severity.DANGER),
    /** A stopped skimmer aerates less. */
    LESS_AIR(Severity.DANGER),
    /** The siphon-break hole stays open. */
    SIPHON_BREAK(Severity.DANGER),
    /** The protective switch is tested. */
    PROTECTIVE_SWITCH(Severity.DANGER),
    /** A power cut is rehearsed. */
    REHEARSE(Severity.CAUTION),
    /** Media a part at a time, in removed tank water. */
    MEDIA_IN_PARTS(Severity.CAUTION),
    /** Media never on the day of pad and pumps; then ammonia is tested. */
    MEDIA_ALONE(Severity.CAUTION),
    /** No detergent, on cup and neck neither. */
    NO_DETERGENT(Severity.CAUTION),
    /** Acids that dissolve scale. */
    ACID(Severity.CAUTION),
    /** Local codes, electricians, a veterinarian. */
    OTHERS_FIRST(Severity.CAUTION);

    private final Severity severity;

    CareCaution(Severity severity) {
        this.severity = severity;
    }

    /** The caution as a warning. */
    public Warning warning() {
        return new Warning(severity, words());
    }

    /** All of them, gravest first. */
    public static List<Warning> all() {
        return Warning.ranked(Stream.of(values()).map(CareCaution::warning).toList());
    }

    Phrase words() {
        return Phrase.of("care.caution." + name());
    }
}
