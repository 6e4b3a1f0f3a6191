package io.github.weirwise.watch;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Notices sensors that used to speak and have stopped; tells of each once until it speaks again. */
final class Silence {
    private final Duration silentAfter;
    private final Map<SensorKind, Instant> heard = new EnumMap<>(SensorKind.class);
    private final Set<SensorKind> reported = EnumSet.noneOf(SensorKind.class);

    Silence(Duration silentAfter) {
        this.silentAfter = silentAfter;
    }

    void heard(SensorKind kind, Instant at) {
        heard.put(kind, at);
        reported.remove(kind);
    }

    /** Sensors that have become silent by now. */
    List<SensorKind> newlySilent(Instant now) {
        List<SensorKind> silent = new ArrayList<>();
        heard.forEach((kind, at) -> {
            if (!now.isBefore(at.plus(silentAfter)) && reported.add(kind)) {
                silent.add(kind);
            }
        });
        return silent;
    }

    Duration silentFor(SensorKind kind, Instant now) {
        return Duration.between(heard.get(kind), now);
    }

    /** Counts silence anew, from a time on another clock. */
    void restart(Instant at) {
        heard.replaceAll((kind, before) -> at);
    }
}
