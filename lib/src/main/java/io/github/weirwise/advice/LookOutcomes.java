package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Outlook;
import io.github.weirwise.diagnosis.Possibility;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What a named reading could show: a few representative observations over the range that the possibilities expect. */
final class LookOutcomes {
    private static final int LEVELS = 7;

    private final Situation situation;

    LookOutcomes(Situation situation) {
        this.situation = situation;
    }

    List<Observation> of(LookKind kind) {
        if (kind.part().isPresent()) {
            Part part = kind.part().get();
            return List.of(
                    new Observation.Inspection(part, Finding.GOOD),
                    new Observation.Inspection(part, Finding.DOUBTFUL),
                    new Observation.Inspection(part, Finding.BAD));
        }
        Settings settings = situation.belief().settings();
        List<Observation> outcomes = new ArrayList<>();
        for (double value : spread(expected(kind, settings))) {
            outcomes.add(observation(kind, value));
        }
        return outcomes;
    }

    private ToDoubleFunction<Integer> expected(LookKind kind, Settings settings) {
        List<Outlook> outlooks = situation.outlooks();
        List<Possibility> sample = situation.sample();
        double target = situation.unit().target().skimmateMlPerDay();
        return switch (kind) {
            case FUNNEL_LEVEL -> i -> outlooks.get(i).submergenceMm();
            case CUP_VOLUME -> i -> Math.exp(outlooks.get(i).logAmount()) * target;
            case DARKNESS -> i -> outlooks.get(i).darknessPtCo();
            case FOAM_LOOK -> i -> Math.exp(outlooks.get(i).logAmount()) * target;
            case HEAD_OVER_CREST -> i -> outlooks.get(i).headMm();
            case CREST_AGAINST_MARK -> i -> sample.get(i).slipMm();
            case OUTSIDE_LEVEL -> i -> outlooks.get(i).outsideMm();
            case AIR_FLOW -> i -> outlooks.get(i).airLitresPerHour();
            case FOAM_COLLAPSE -> i -> sample.get(i).meanLifeSeconds();
            case LEVEL_BEYOND_WEIR ->
                i -> sample.get(i).drownedByMm() > 0 ? sample.get(i).drownedByMm() : -40;
            case RETURN_FLOW -> i -> sample.get(i).flowLitresPerHour();
            case SALINITY -> i -> settings.practicalSalinity() + sample.get(i).salinityShift();
            default -> throw new IllegalArgumentException("not a measured reading: " + kind);
        };
    }

    private double[] spread(ToDoubleFunction<Integer> expected) {
        double[] values = new double[situation.sample().size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = expected.applyAsDouble(i);
        }
        Arrays.sort(values);
        double[] picked = new double[LEVELS];
        for (int k = 0; k < LEVELS; k++) {
            picked[k] = values[(int) ((k + 0.5) / LEVELS * values.length)];
        }
        return Arrays.stream(picked).distinct().toArray();
    }

    private Observation observation(LookKind kind, double value) {
        double positive = Math.max(0, value);
        return switch (kind) {
            case FUNNEL_LEVEL -> new Observation.FunnelLevel(clamp(value, -300, 500));
            case CUP_VOLUME, FOAM_LOOK -> new Observation.CupVolume(Math.min(100000, positive), 24, false);
            case DARKNESS -> new Observation.DarknessMatch(Math.min(100000, positive));
            case HEAD_OVER_CREST -> new Observation.HeadOverCrest(Math.min(300, positive));
            case CREST_AGAINST_MARK -> new Observation.CrestAgainstMark(clamp(value, -100, 100));
            case OUTSIDE_LEVEL -> new Observation.OutsideLevel(clamp(value, -500, 500));
            case AIR_FLOW -> new Observation.AirFlow(Math.min(20000, positive));
            case FOAM_COLLAPSE -> new Observation.FoamCollapse(clamp(value, 1, 36000));
            case LEVEL_BEYOND_WEIR -> new Observation.LevelBeyondWeir(clamp(value, -1000, 300));
            case RETURN_FLOW -> new Observation.ReturnFlow(Math.min(100000, positive));
            case SALINITY -> new Observation.Salinity(clamp(value, 0, 42));
            default -> throw new IllegalArgumentException("not a measured reading: " + kind);
        };
    }

    private static double clamp(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }
}
