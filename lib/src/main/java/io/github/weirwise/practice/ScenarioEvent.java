package io.github.weirwise.practice;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.tank.TankEvent;
import java.util.Objects;
import java.util.Optional;

/**
 * Something that happens in a scenario; hidden unless it is noted.
 *
 * @param event what and when, on the scenario's clock
 * @param noted how it stands in the journal, if anybody noted it
 */
public record ScenarioEvent(TankEvent event, Optional<Happening.Kind> noted) {
    /** Rejects nulls. */
    public ScenarioEvent {
        Objects.requireNonNull(event, "event");
        Objects.requireNonNull(noted, "noted");
    }
}
