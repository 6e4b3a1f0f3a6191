package io.github.weirwise.tank;

import java.util.List;
import java.util.Objects;

/**
 * What a run over time gives.
 *
 * @param end where it ended
 * @param samples states at equal distances, the start not included
 */
public record TankRun(TankState end, List<TankState> samples) {
    /** Copies the list. */
    public TankRun {
        Objects.requireNonNull(end, "end");
        samples = List.copyOf(samples);
    }
}
