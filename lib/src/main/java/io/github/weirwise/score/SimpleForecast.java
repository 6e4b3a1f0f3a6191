package io.github.weirwise.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A forecast without a model: the mean of the last values (one: "as last time"), with the scatter of its own misses so far. It
 * learns only from what was read before.
 */
final class SimpleForecast {
    private static final double PRIOR_COUNT = 3;

    private final int last;
    private final double priorDeviation;
    private final List<Double> seen = new ArrayList<>();
    private double squares;
    private int misses;

    SimpleForecast(int last, double priorDeviation) {
        this.last = last;
        this.priorDeviation = priorDeviation;
    }

    /** What it says of the next value; nothing before the first. */
    Optional<Bell> next() {
        if (seen.isEmpty()) {
            return Optional.empty();
        }
        double mean = seen.subList(Math.max(0, seen.size() - last), seen.size()).stream()
                .mapToDouble(each -> each)
                .average()
                .orElseThrow();
        double variance = (PRIOR_COUNT * priorDeviation * priorDeviation + squares) / (PRIOR_COUNT + misses);
        return Optional.of(new Bell(mean, Math.sqrt(variance)));
    }

    /** Learns what came. */
    void see(double value) {
        next().ifPresent(bell -> {
            squares += (value - bell.mean()) * (value - bell.mean());
            misses++;
        });
        seen.add(value);
    }
}
