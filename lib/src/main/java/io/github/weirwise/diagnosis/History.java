package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.unit.Part;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * When what was last seen and done: what the step's choice asks besides the numbers. Changed in place.
 *
 * @param services the newest service of a part
 * @param looks the newest look at a part
 * @param findings what the newest look since the last service found
 * @param readings when an instrument was last read
 * @param values what it showed
 * @param happenings when something last happened
 * @param visits when the last visits were
 */
record History(
        Map<Part, Instant> services,
        Map<Part, Instant> looks,
        Map<Part, Finding> findings,
        Map<Instrument, Instant> readings,
        Map<Instrument, Observation> values,
        Map<Happening.Kind, Instant> happenings,
        List<Instant> visits) {
    private static final Duration SAME_VISIT = Duration.ofHours(4);
    private static final int VISITS_KEPT = 6;

    static History nothing() {
        return new History(
                new EnumMap<>(Part.class),
                new EnumMap<>(Part.class),
                new EnumMap<>(Part.class),
                new EnumMap<>(Instrument.class),
                new EnumMap<>(Instrument.class),
                new EnumMap<>(Happening.Kind.class),
                new ArrayList<>());
    }

    History copy() {
        return new History(
                new EnumMap<>(services),
                new EnumMap<>(looks),
                new EnumMap<>(findings),
                new EnumMap<>(readings),
                new EnumMap<>(values),
                new EnumMap<>(happenings),
                new ArrayList<>(visits));
    }

    void serviced(Part part, Instant at) {
        services.put(part, at);
        findings.remove(part);
    }

    void seen(Instrument row, Observation seen, Instant at) {
        readings.put(row, at);
        values.put(row, seen);
        if (seen instanceof Observation.Inspection inspection) {
            looks.put(inspection.part(), at);
            findings.put(inspection.part(), inspection.finding());
        }
    }

    void visited(Instant at) {
        if (visits.isEmpty()
                || Duration.between(visits.get(visits.size() - 1), at).compareTo(SAME_VISIT) > 0) {
            visits.add(at);
            if (visits.size() > VISITS_KEPT) {
                visits.remove(0);
            }
        }
    }

    /** The middle one of the times between the last visits. */
    Optional<Duration> rhythm() {
        List<Duration> between = new ArrayList<>();
        for (int i = 1; i < visits.size(); i++) {
            between.add(Duration.between(visits.get(i - 1), visits.get(i)));
        }
        between.sort(Comparator.naturalOrder());
        return between.isEmpty() ? Optional.empty() : Optional.of(between.get(between.size() / 2));
    }

    void happened(Happening happening) {
        happenings.put(happening.kind(), happening.at());
    }
}
