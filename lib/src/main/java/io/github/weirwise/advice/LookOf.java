package io.github.weirwise.advice;

import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.Observation;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which named reading an observation belongs to.
 *
 * @since 0.1
 */
public final class LookOf {
    private static final Map<Class<? extends Observation>, LookKind> MEASURED = measured();

    private LookOf() {}

    /** The kind, or empty for an observation that nobody asks for by name. */
    public static Optional<LookKind> kind(Observation observation) {
        if (observation instanceof Observation.Inspection inspection) {
            return Arrays.stream(LookKind.values())
                    .filter(kind ->
                            kind.part().filter(inspection.part()::equals).isPresent())
                    .findFirst();
        }
        return Optional.ofNullable(MEASURED.get(observation.getClass()));
    }

    /** The observations that record a look, in the order of their instruments; an inspection for a look at a part. */
    public static List<Class<? extends Observation>> observations(LookKind look) {
        if (look.part().isPresent()) {
            return List.of(Observation.Inspection.class);
        }
        return Arrays.stream(Instrument.values())
                .<Class<? extends Observation>>map(Instrument::kind)
                .filter(kind -> MEASURED.get(kind) == look)
                .toList();
    }

    private static Map<Class<? extends Observation>, LookKind> measured() {
        Map<Class<? extends Observation>, LookKind> measured = new HashMap<>();
        for (LookKind kind : LookKind.values()) {
            kind.instrument().ifPresent(row -> measured.put(row.kind(), kind));
        }
        measured.put(Observation.DarknessMatch.class, LookKind.DARKNESS);
        return Map.copyOf(measured);
    }
}
