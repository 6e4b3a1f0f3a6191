package io.github.weirwise.tank;

import java.util.List;

/**
 * What a run over time gives.
 *
 * @param end where it ended
 * @param samples states at equal distances, the start not included
 */
public record TankRun(TankState end, List<TankState> samples) {
    /** Copies the list. */
    public TankRun {
        samples = List.copyOf(samples);
    }
}
