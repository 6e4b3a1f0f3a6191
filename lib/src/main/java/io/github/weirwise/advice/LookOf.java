package io.github.weirwise.advice;

import io.github.weirwise.reading.Observation;
import java.util.Arrays;
import java.util.Optional;

/** Which named reading an observation belongs to. */
public final class LookOf {
    private LookOf() {}

    /** The kind, or empty for an observation that nobody asks for by name. */
    public static Optional<LookKind> kind(Observation observation) {
        if (observation instanceof Observation.Inspection inspection) {
            return Arrays.stream(LookKind.values())
                    .filter(kind ->
                            kind.part().filter(inspection.part()::equals).isPresent())
                    .findFirst();
        }
        return Optional.ofNullable(measured(observation));
    }

    private static LookKind measured(Observation observation) {
        if (observation instanceof Observation.FunnelLevel) {
            return LookKind.FUNNEL_LEVEL;
        }
        if (observation instanceof Observation.CupVolume) {
            return LookKind.CUP_VOLUME;
        }
        if (observation instanceof Observation.Darkness || observation instanceof Observation.DarknessMatch) {
            return LookKind.DARKNESS;
        }
        if (observation instanceof Observation.FoamLook) {
            return LookKind.FOAM_LOOK;
        }
        if (observation instanceof Observation.HeadOverCrest) {
            return LookKind.HEAD_OVER_CREST;
        }
        if (observation instanceof Observation.CrestAgainstMark) {
            return LookKind.CREST_AGAINST_MARK;
        }
        if (observation instanceof Observation.OutsideLevel) {
            return LookKind.OUTSIDE_LEVEL;
        }
        if (observation instanceof Observation.AirFlow) {
            return LookKind.AIR_FLOW;
        }
        if (observation instanceof Observation.FoamCollapse) {
            return LookKind.FOAM_COLLAPSE;
        }
        if (observation instanceof Observation.LevelBeyondWeir) {
            return LookKind.LEVEL_BEYOND_WEIR;
        }
        if (observation instanceof Observation.ReturnFlow) {
            return LookKind.RETURN_FLOW;
        }
        return observation instanceof Observation.Salinity ? LookKind.SALINITY : null;
    }
}
