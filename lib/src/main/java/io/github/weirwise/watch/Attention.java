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
 * @param sensor which sensor, when it is about one
 * @param text the call in words
 * @param advice the step with its reasons and cautions, when there is one
 * @since 0.1
 */
public record Attention(Instant at, Matter matter, Optional<SensorKind> sensor, Phrase text, Optional<Advice> advice) {
    /** What a call is about, most pressing first. */
    public enum Matter {
        /** Water on the floor or animals in danger: make safe now. */
        SAFETY,
        /** A sensor shows something quite different from a moment ago. */
        LEAP,
        /** A weir move or a service that is worth coming for. */
        STEP,
        /** One more reading by a person, worth more than its effort. */
        LOOK,
        /** No sensor says anything; what happened meanwhile is not known. */
        SILENCE,
        /** One sensor says nothing while others do. */
        SENSOR_SILENT,
        /** A sensor says only what no sound sensor says. */
        SENSOR_BLIND,
        /** A sensor has said the same to the last digit for a day. */
        SENSOR_STUCK,
        /** A sensor jumps up and down. */
        SENSOR_RESTLESS,
        /** A sensor's clock stepped, or does not go with the others. */
        SENSOR_CLOCK
    }

    /** Rejects nulls. */
    public Attention {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(matter, "matter");
        Objects.requireNonNull(sensor, "sensor");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(advice, "advice");
    }
}
