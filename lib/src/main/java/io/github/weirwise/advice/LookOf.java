package io.github.weirwise.advice;

import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.Observation;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which named reading an observation belongs to.
 *
 * @since 0.1
 */
public final class LookOf {
    private static final Map<Class<? extends Observation>, LookKind> MEASURED = Map.ofEntries(
            Map.entry(Observation.FunnelLevel.class, LookKind.FUNNEL_LEVEL),
            Map.entry(Observation.CupVolume.class, LookKind.CUP_VOLUME),
            Map.entry(Observation.Darkness.class, LookKind.DARKNESS),
            Map.entry(Observation.DarknessMatch.class, LookKind.DARKNESS),
            Map.entry(Observation.FoamLook.class, LookKind.FOAM_LOOK),
            Map.entry(Observation.HeadOverCrest.class, LookKind.HEAD_OVER_CREST),
            Map.entry(Observation.CrestAgainstMark.class, LookKind.CREST_AGAINST_MARK),
            Map.entry(Observation.OutsideLevel.class, LookKind.OUTSIDE_LEVEL),
            Map.entry(Observation.AirFlow.class, LookKind.AIR_FLOW),
            Map.entry(Observation.FoamCollapse.class, LookKind.FOAM_COLLAPSE),
            Map.entry(Observation.FoamCreep.class, LookKind.FOAM_CREEP),
            Map.entry(Observation.LevelBeyondWeir.class, LookKind.LEVEL_BEYOND_WEIR),
            Map.entry(Observation.ReturnFlow.class, LookKind.RETURN_FLOW),
            Map.entry(Observation.Salinity.class, LookKind.SALINITY));

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
}
