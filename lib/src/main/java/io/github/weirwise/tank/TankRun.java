package io.github.weirwise.tank;

import java.util.List;
import java.util.Objects;

/**
 * What a run over time gives.
 *
 * @param start where it began
 * @param end where it ended
 * @param samples states at equal distances, the start not included
 * @param occurrences what the tank did by itself, in order
 */
public record TankRun(TankState start, TankState end, List<TankState> samples, List<TankOccurrence> occurrences) {
    /** Copies the lists. */
    public TankRun {
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(end, "end");
        samples = List.copyOf(samples);
        occurrences = List.copyOf(occurrences);
    }
}
