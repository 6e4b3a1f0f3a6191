package io.github.weirwise.reading;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Settings;
import java.time.Instant;
import java.util.Objects;

/**
 * Flow or air was changed on purpose.
 *
 * @param at when
 * @param what which of the two
 * @param litresPerHour new value, 0 to 100000 L/h of water or 0 to 20000 L/h of air
 * @since 0.1
 */
public record SettingChange(Instant at, Knob what, double litresPerHour) implements JournalEntry {
    private static final Limit LITRES_PER_HOUR =
            Limit.of("litresPerHour", 0, 100000, Unit.LITRE_PER_HOUR, "reading.try.giveLitresPerHour");

    private static final double MOST_FLOW = 100000;
    private static final double MOST_AIR = 20000;

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
        double most = what == Knob.AIR ? MOST_AIR : MOST_FLOW;
        LITRES_PER_HOUR.checkTo(litresPerHour, most);
    }

    @Override
    public Settings settingsAfter(Settings before) {
        return what == Knob.FLOW
                ? before.withFlowLitresPerHour(litresPerHour)
                : before.withAirLitresPerHour(litresPerHour);
    }
}
