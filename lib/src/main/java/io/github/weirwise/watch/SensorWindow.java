package io.github.weirwise.watch;

import java.time.Instant;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/** The values of one stretch of time, each kind for itself, in bounded memory whatever comes. */
final class SensorWindow {
    private final Instant start;
    private final Map<SensorKind, Values> values = new EnumMap<>(SensorKind.class);

    SensorWindow(Instant start) {
        this.start = start;
    }

    Instant start() {
        return start;
    }

    void add(SensorKind kind, double value) {
        values.computeIfAbsent(kind, any -> new Values()).add(value);
    }

    /** The median of each kind that has at least so many values. */
    Map<SensorKind, Double> medians(int fewest) {
        Map<SensorKind, Double> medians = new EnumMap<>(SensorKind.class);
        values.forEach((kind, each) -> {
            if (each.seen >= fewest) {
                medians.put(kind, each.median());
            }
        });
        return medians;
    }

    /** All values while they are few; when they are many, every second, every fourth and so on, evenly over the time. */
    private static final class Values {
        private static final int MOST = 256;

        private final double[] kept = new double[MOST];
        private int count;
        private long seen;
        private long stride = 1;

        void add(double value) {
            if (seen++ % stride != 0) {
                return;
            }
            if (count == MOST) {
                thin();
                if ((seen - 1) % stride != 0) {
                    return;
                }
            }
            kept[count++] = value;
        }

        private void thin() {
            for (int i = 0; i < MOST / 2; i++) {
                kept[i] = kept[2 * i];
            }
            count = MOST / 2;
            stride *= 2;
        }

        double median() {
            double[] sorted = Arrays.copyOf(kept, count);
            Arrays.sort(sorted);
            return count % 2 == 1 ? sorted[count / 2] : (sorted[count / 2 - 1] + sorted[count / 2]) / 2;
        }
    }
}
