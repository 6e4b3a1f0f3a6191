package io.github.weirwise.reading;

import io.github.weirwise.report.Require;
import java.time.Instant;
import java.util.Objects;

/**
 * Flow or air was changed on purpose.
 *
 * @param at when
 * @param what which of the two
 * @param litresPerHour new value, 0 to 100000 L/h
 * @since 0.1
 */
public record SettingChange(Instant at, Knob what, double litresPerHour) implements JournalEntry {
    /** What can be changed besides the weir. */
    public enum Knob {
        /** Water through the unit. */
        FLOW,
        /** Clean air draw of the injectors. */
        AIR
    }

    /** Checks the range. */
    public SettingChange {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(what, "what");
        Require.inRange("litresPerHour", litresPerHour, 0, 100000, "L/h", "give litres per hour");
    }
}
