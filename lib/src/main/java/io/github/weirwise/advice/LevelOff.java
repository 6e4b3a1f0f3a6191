package io.github.weirwise.advice;

import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import java.time.Instant;
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
        LevelsNoted levels = scene.noted().levels();
        return levels.count() >= LEAST_READINGS
                ? Optional.of(new LevelOff(
                        levels.sumMm() / levels.count(), levels.since().orElseThrow()))
                : Optional.empty();
    }

    /**
     * How far the level stands under where it stood, each time against what the settings give: the mean of the two newest
     * readings against the mean of those before; 0 with fewer than two before, mm.
     */
    static double fallenMm(GuardScene scene) {
        return scene.noted().levels().fallenMm();
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
