package io.github.weirwise.watch;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * Says when the medians of a window are worth a reading: when the last one is old, or when a value has moved by more than one
 * reading scatters - in two windows in a row, or by far in one. Chasing every wiggle would bury the journal and make the
 * adviser surer than the sensor deserves.
 */
final class ReadingNeed {
    private static final double FAR = 4;

    private final Duration readEvery;
    private final Map<SensorKind, Double> told = new EnumMap<>(SensorKind.class);
    private final Set<SensorKind> movedBefore = EnumSet.noneOf(SensorKind.class);
    private Instant toldAt;

    ReadingNeed(Duration readEvery) {
        this.readEvery = readEvery;
    }

    boolean isWorthTelling(Instant at, Map<SensorKind, Double> medians) {
        if (medians.isEmpty()) {
            return false;
        }
        boolean moved = false;
        Set<SensorKind> movedNow = EnumSet.noneOf(SensorKind.class);
        for (Map.Entry<SensorKind, Double> each : medians.entrySet()) {
            double scatters = moveInScatters(each.getKey(), each.getValue());
            if (scatters > 1) {
                movedNow.add(each.getKey());
            }
            moved |= scatters > FAR || scatters > 1 && movedBefore.contains(each.getKey());
        }
        movedBefore.clear();
        movedBefore.addAll(movedNow);
        return moved || toldAt == null || !at.isBefore(toldAt.plus(readEvery));
    }

    private double moveInScatters(SensorKind kind, double value) {
        Double before = told.get(kind);
        return before == null ? 0 : Math.abs(value - before) / kind.worthTelling(before);
    }

    void told(Instant at, Map<SensorKind, Double> medians) {
        told.putAll(medians);
        toldAt = at;
        movedBefore.clear();
    }

    /** After a step of the clock the old times mean nothing. */
    void forgetTimes() {
        toldAt = null;
        movedBefore.clear();
    }
}
