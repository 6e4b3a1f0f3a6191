package io.github.weirwise.watch;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.report.Phrase;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * A call for a person.
 *
 * @param at when, by the sensors' clock
 * @param matter what it is about
 * @param text the call in words
 * @param advice the step with its reasons and cautions, when there is one
 * @since 0.1
 */
public record Attention(Instant at, Matter matter, Phrase text, Optional<Advice> advice) {
    /** What a call is about, most pressing first. */
    public enum Matter {
        /** Water on the floor or animals in danger: make safe now. */
        SAFETY,
        /** A weir move or a service that is worth coming for. */
        STEP,
        /** One more reading by a person, worth more than its effort. */
        LOOK,
        /** The sensors' clock was set back; entries written before may lie in its future. */
        CLOCK_SET_BACK,
        /** Nothing came for long; what happened meanwhile is not known. */
        GAP,
        /** One sensor says nothing while others do. */
        SENSOR_SILENT
    }

    /** Rejects nulls. */
    public Attention {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(matter, "matter");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(advice, "advice");
    }
}
