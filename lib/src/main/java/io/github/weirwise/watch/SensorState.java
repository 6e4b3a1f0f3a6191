package io.github.weirwise.watch;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a watch keeps of one sensor; a value that can be written down and read again.
 *
 * @param kind which sensor
 * @param newest the newest time on the sensor's own clock
 * @param aheadSeconds by how much the watch's time is ahead of that clock
 * @param doubtful up to two values whose time does not follow
 * @param window values since the window began, at most 64
 * @param told what was last written into the book
 * @param moved whether the last window had moved by more than a reading scatters
 * @param heardAt when it last spoke, on the watch's time
 * @param soundAt when it last said something that a sound sensor can say
 * @param same the value that it says now, unchanged for some time
 * @param sameSince since when
 * @param sameCount how often in a row
 * @param leaps when it leapt within the last day
 * @param othersSpoke whether another sensor spoke in order while this one's time is in doubt
 * @since 0.2
 */
public record SensorState(
        SensorKind kind,
        Instant newest,
        double aheadSeconds,
        List<SensorValue> doubtful,
        List<Double> window,
        Optional<Double> told,
        boolean moved,
        Instant heardAt,
        Instant soundAt,
        Optional<Double> same,
        Instant sameSince,
        int sameCount,
        List<Instant> leaps,
        boolean othersSpoke) {
    /** Copies the lists; rejects nulls. */
    public SensorState {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(newest, "newest");
        doubtful = List.copyOf(doubtful);
        window = List.copyOf(window);
        leaps = List.copyOf(leaps);
        Objects.requireNonNull(told, "told");
        Objects.requireNonNull(heardAt, "heardAt");
        Objects.requireNonNull(soundAt, "soundAt");
        Objects.requireNonNull(same, "same");
        Objects.requireNonNull(sameSince, "sameSince");
    }
}
