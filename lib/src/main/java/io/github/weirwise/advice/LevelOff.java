package io.github.weirwise.advice;

import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyInputs;
import io.github.weirwise.unit.SteadyLaw;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A level that is persistently off: at least two readings in a row on the same side, each more than three times a reader's
 * scatter from what the settings and the sheet give. Once a look or a service has found nothing, their mean is this unit's own
 * zero, and only what departs from that is off again.
 *
 * @param meanMm how far, up is positive
 * @param since the first of those readings
 */
record LevelOff(double meanMm, Instant since) {
    private static final double SCATTERS = 3;
    private static final int LEAST_READINGS = 2;
    private static final Set<LookKind> TELLING = Set.of(
            LookKind.LEVEL_BEYOND_WEIR,
            LookKind.FILTER_PAD,
            LookKind.CREST_AGAINST_MARK,
            LookKind.HEAD_OVER_CREST,
            LookKind.RETURN_FLOW,
            LookKind.CUP_VENT,
            LookKind.OUTSIDE_LEVEL);

    static Optional<LevelOff> in(GuardScene scene) {
        Walk walk = new Walk(scene);
        scene.journal().entries().forEach(walk::take);
        return walk.count >= LEAST_READINGS
                ? Optional.of(new LevelOff(walk.sumMm / walk.count, walk.since))
                : Optional.empty();
    }

    /**
     * How far the level stands under where it stood, each time against what the settings give: the mean of the two newest
     * readings against the mean of those before; 0 with fewer than two before, mm.
     */
    static double fallenMm(GuardScene scene) {
        Walk walk = new Walk(scene);
        scene.journal().entries().forEach(walk::take);
        List<Double> offs = walk.offs;
        int before = offs.size() - NEWEST;
        if (before < NEWEST) {
            return 0;
        }
        return mean(offs.subList(0, before)) - mean(offs.subList(before, offs.size()));
    }

    private static double mean(List<Double> some) {
        return some.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }

    private static final int NEWEST = 2;

    /** One walk through the journal. */
    private static final class Walk {
        private final SkimmerUnit unit;
        private final SteadyLaw law;
        private Settings settings;
        private double expectedMm;
        private double zeroMm;
        private double sumMm;
        private int count;
        private Instant since;
        private final List<Double> offs = new ArrayList<>();

        Walk(GuardScene scene) {
            unit = scene.unit();
            law = new SteadyLaw(unit);
            settings = scene.start();
            expectedMm = expected();
        }

        void take(JournalEntry entry) {
            Settings after = entry.settingsAfter(settings);
            if (!after.equals(settings)) {
                settings = after;
                expectedMm = expected();
            }
            if (entry instanceof Service) {
                foundNothing();
            } else if (entry instanceof Reading reading) {
                reading.find(Observation.FunnelLevel.class).ifPresent(level -> read(level.mm(), entry.at()));
                if (reading.observations().stream().anyMatch(Walk::clears)) {
                    foundNothing();
                }
            }
        }

        private void read(double mm, Instant at) {
            offs.add(mm - expectedMm);
            double off = mm - expectedMm - zeroMm;
            if (!(Math.abs(off) > SCATTERS * Instrument.FUNNEL_LEVEL.scatter())) {
                start(0, 0, at);
            } else if (count > 0 && Math.signum(off) == Math.signum(sumMm)) {
                sumMm += off;
                count++;
            } else {
                start(off, 1, at);
            }
        }

        private void start(double off, int readings, Instant at) {
            sumMm = off;
            count = readings;
            since = at;
        }

        /** What was off all along and has no cause is how this unit, or this reader, stands. */
        private void foundNothing() {
            if (count > 0) {
                zeroMm += sumMm / count;
                start(0, 0, null);
            }
        }

        /** A look at something that moves the level, and that was not found at fault. */
        private static boolean clears(Observation seen) {
            if (seen instanceof Observation.Inspection look) {
                return look.finding() == Finding.GOOD
                        && switch (look.part()) {
                            case CUP_VENT, WEIR_PLATE, FILTER_PAD, RETURN_PUMP, AIR_LINE, INJECTOR_PUMP -> true;
                            default -> false;
                        };
            }
            return seen instanceof Observation.HeadOverCrest
                    || seen instanceof Observation.CrestAgainstMark
                    || seen instanceof Observation.LevelBeyondWeir
                    || seen instanceof Observation.ReturnFlow
                    || seen instanceof Observation.OutsideLevel;
        }

        private double expected() {
            return law.at(SteadyInputs.of(unit, settings)).columnLevelM() * 1000
                    - unit.column().funnelBaseMm();
        }
    }

    /** What it means for the reader. */
    Warning caution() {
        Quantity size = Quantity.of(Math.abs(meanMm), Unit.MILLIMETRE);
        return meanMm > 0
                ? Warning.caution("advice.caution.levelHigh", size)
                : Warning.caution("advice.caution.levelLow", size);
    }

    /** Whether a look tells about the level. */
    static boolean tellsOfLevel(LookKind kind) {
        return TELLING.contains(kind);
    }

    /** The look that tells most: whether water backs up, where the weir stands, how much water comes. */
    Optional<LookKind> look(GuardScene scene) {
        LookKind[] order = meanMm > 0
                ? new LookKind[] {
                    LookKind.LEVEL_BEYOND_WEIR,
                    LookKind.FILTER_PAD,
                    LookKind.CREST_AGAINST_MARK,
                    LookKind.HEAD_OVER_CREST,
                    LookKind.OUTSIDE_LEVEL
                }
                : new LookKind[] {
                    LookKind.CREST_AGAINST_MARK,
                    LookKind.HEAD_OVER_CREST,
                    LookKind.RETURN_FLOW,
                    LookKind.CUP_VENT,
                    LookKind.OUTSIDE_LEVEL
                };
        for (LookKind each : order) {
            if (scene.looks().contains(each)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }
}
