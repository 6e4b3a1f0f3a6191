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

/** When what was last seen and done: what the step's choice asks besides the numbers. */
final class History {
    private static final Duration SAME_VISIT = Duration.ofHours(4);
    private static final int VISITS_KEPT = 6;

    private final Map<Part, Instant> services = new EnumMap<>(Part.class);
    private final Map<Part, Instant> looks = new EnumMap<>(Part.class);
    private final Map<Part, Finding> findings = new EnumMap<>(Part.class);
    private final Map<Instrument, Instant> readings = new EnumMap<>(Instrument.class);
    private final Map<Instrument, Observation> values = new EnumMap<>(Instrument.class);
    private final Map<Happening.Kind, Instant> happenings = new EnumMap<>(Happening.Kind.class);

    private final List<Instant> visits = new ArrayList<>();

    /** All of it as values. */
    record Kept(
            Map<Part, Instant> services,
            Map<Part, Instant> looks,
            Map<Part, Finding> findings,
            Map<Instrument, Instant> readings,
            Map<Instrument, Observation> values,
            Map<Happening.Kind, Instant> happenings,
            List<Instant> visits) {}

    History() {}

    /** The history that was kept. */
    History(Kept kept) {
        services.putAll(kept.services);
        looks.putAll(kept.looks);
        findings.putAll(kept.findings);
        readings.putAll(kept.readings);
        values.putAll(kept.values);
        happenings.putAll(kept.happenings);
        visits.addAll(kept.visits);
    }

    Kept kept() {
        return new Kept(services, looks, findings, readings, values, happenings, visits);
    }

    History copy() {
        return new History(kept());
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

    boolean nothingSeen() {
        return readings.isEmpty();
    }

    /** The newest service of a part. */
    Optional<Instant> service(Part part) {
        return Optional.ofNullable(services.get(part));
    }

    /** The newest look at a part. */
    Optional<Instant> look(Part part) {
        return Optional.ofNullable(looks.get(part));
    }

    /** What the newest look since the last service found. */
    Optional<Finding> finding(Part part) {
        return Optional.ofNullable(findings.get(part));
    }

    /** When an instrument was last read. */
    Optional<Instant> reading(Instrument row) {
        return Optional.ofNullable(readings.get(row));
    }

    /** What an instrument last showed. */
    Optional<Observation> value(Instrument row) {
        return Optional.ofNullable(values.get(row));
    }

    /** When something last happened. */
    Optional<Instant> happening(Happening.Kind kind) {
        return Optional.ofNullable(happenings.get(kind));
    }
}
