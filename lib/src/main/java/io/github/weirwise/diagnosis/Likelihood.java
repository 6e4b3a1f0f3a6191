package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Observation;

/**
 * How likely an observation is if a possibility is true, reading type by reading type.
 *
 * <p>Measured numbers follow a normal law with a share of misreadings spread evenly over what could be read at all (heavy
 * tails); words follow ordered thresholds. Spreads are our own estimates of what a person with a ruler in bubbly water
 * can do, plus the law's own doubt; levels to 2 or 3 mm are common practice. All numbers are stated here and nowhere else.
 */
final class Likelihood {
    /** Share of readings that are simply wrong. */
    private static final double MISREAD = 0.04;

    private static final double LEVEL_MM = 2;
    private static final double OUTSIDE_MM = 1.8;
    private static final double HEAD_MM = 1.2;
    private static final double HEAD_SHARE = 0.06;
    private static final double MARK_MM = 0.9;
    private static final double BEYOND_MM = 3;
    private static final double FREE_BEYOND_MM = -40;
    private static final double FREE_BEYOND_SPREAD_MM = 25;
    private static final double AIR_SHARE = 0.07;
    private static final double FLOW_SHARE = 0.08;
    private static final double SALINITY = 0.8;
    private static final double AMOUNT_LOG = 0.33;
    private static final double DARKNESS_LOG = 0.45;
    private static final double COLLAPSE_LOG = 0.5;
    private static final double LOOK_LOG = 0.8;
    /** Amounts below this share of the target cannot be told from nothing. */
    static final double LEAST_SHARE = 0.03;

    /** Darkness under this cannot be told from clear water, Pt-Co. */
    static final double DARKNESS_FLOOR = 30;

    private static final double LOG_LEAST_SHARE = Math.log(LEAST_SHARE);
    private static final double ANY_WORD_LOG = Math.log(0.2);
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);
    private static final double[] WORD_LIMITS = wordLimits();

    /** Logarithms of the amount over the target between the six looks of the foam. */
    private static final double[] LOOK_LIMITS = {-4.5, -2.2, -0.6, 0.85, 2.2};

    private Likelihood() {}

    /**
     * Logarithm of the likelihood.
     *
     * @param unsettled share of the reading's time in which the foam had not settled, 0 to 1; widens amount and looks
     */
    static double log(Observation observation, View view, double unsettled) {
        Outlook outlook = view.outlook();
        if (observation instanceof Observation.FunnelLevel level) {
            return level(level, view, true);
        }
        if (observation instanceof Observation.CupVolume cup) {
            return amount(cup, view, unsettled);
        }
        if (observation instanceof Observation.Darkness darkness) {
            return unsettled == 0 ? view.darknessLog(darkness.word()) : word(darkness.word(), view, unsettled);
        }
        if (observation instanceof Observation.DarknessMatch match) {
            double offset = Math.log(match.ptCo() + DARKNESS_FLOOR) - view.logDarknessSeen();
            return measured(offset, widened(DARKNESS_LOG, unsettled), 6);
        }
        if (observation instanceof Observation.FoamLook look) {
            return unsettled == 0 ? view.lookLog(look.look()) : look(look.look(), outlook, unsettled);
        }
        if (observation instanceof Observation.HeadOverCrest head) {
            double spread = widened(HEAD_MM, HEAD_SHARE * outlook.headMm());
            // A person measures from the real crest, wherever its mark says it is.
            return measured(head.mm() - outlook.headMm(), spread, 40);
        }
        if (observation instanceof Observation.CrestAgainstMark mark) {
            double real = view.influence().slipMm();
            return measured(mark.mm() - real, widened(MARK_MM, 0.7), 30);
        }
        if (observation instanceof Observation.OutsideLevel outside) {
            return measured(outside.mm() - outlook.outsideMm(), OUTSIDE_MM, 60);
        }
        if (observation instanceof Observation.AirFlow air) {
            return ratio(air.litresPerHour(), outlook.airLitresPerHour(), AIR_SHARE);
        }
        if (observation instanceof Observation.ReturnFlow flow) {
            double real = view.settings().flowLitresPerHour()
                    * view.unknowns().flowScale()
                    * view.influence().flowFactor();
            return ratio(flow.litresPerHour(), real, FLOW_SHARE);
        }
        if (observation instanceof Observation.LevelBeyondWeir beyond) {
            return beyond(beyond.mm(), view.beyondMm());
        }
        if (observation instanceof Observation.Salinity salinity) {
            double real = view.settings().practicalSalinity() + view.influence().salinityShift();
            return measured(salinity.practicalSalinity() - real, SALINITY, 40);
        }
        if (observation instanceof Observation.FoamCollapse collapse) {
            double real = view.unit().traits().meanLifeSeconds()
                    * view.unknowns().lifeScale()
                    * view.influence().lifeFactor();
            return measured(Math.log(collapse.seconds() / real), COLLAPSE_LOG, 6);
        }
        if (observation instanceof Observation.Inspection inspection) {
            return finding(inspection.finding(), view.faultSize(inspection.part()));
        }
        return 0;
    }

    /** Level by ruler; each reader's eye has a bias of its own. */
    static double level(Observation.FunnelLevel level, View view, boolean usualReader) {
        double bias =
                usualReader ? view.unknowns().rulerBiasMm() : view.unknowns().otherBiasMm();
        return measured(level.mm() - view.outlook().submergenceMm() - bias, LEVEL_MM, 60);
    }

    /** A free weir may have the water beyond anywhere below its crest, but not above it. */
    private static double beyond(double seenMm, double drownedByMm) {
        if (drownedByMm > 0) {
            return measured(seenMm - drownedByMm, BEYOND_MM, 100);
        }
        return seenMm > BEYOND_MM
                ? Math.log(MISREAD / 100)
                : measured(seenMm - FREE_BEYOND_MM, FREE_BEYOND_SPREAD_MM, 100);
    }

    private static double amount(Observation.CupVolume cup, View view, double unsettled) {
        double target = view.unit().target().skimmateMlPerDay();
        double seen = Math.log(cup.mlPerDay() / target + LEAST_SHARE);
        double expected = view.logAmountSeen();
        double spread = widened(AMOUNT_LOG, 0.8 * unsettled);
        if (cup.full()) {
            return Math.log((1 - MISREAD) * normalAbove(seen, expected, spread) + MISREAD * 0.5);
        }
        return measured(seen - expected, spread, 9);
    }

    static double word(DarknessWord word, View view, double unsettled) {
        if (view.outlook().logAmount() < LOG_LEAST_SHARE) {
            // Next to nothing in the cup: what is there may be any old residue.
            return ANY_WORD_LOG;
        }
        double expected = view.logDarknessSeen();
        double spread = widened(DARKNESS_LOG, 0.6 * unsettled);
        int index = word.ordinal();
        double from = index == 0 ? 1 : normalAbove(WORD_LIMITS[index - 1], expected, spread);
        double above = index == WORD_LIMITS.length ? 0 : normalAbove(WORD_LIMITS[index], expected, spread);
        return Math.log((1 - MISREAD) * (from - above) + MISREAD / 5);
    }

    private static double[] wordLimits() {
        DarknessWord[] words = DarknessWord.values();
        double[] limits = new double[words.length - 1];
        for (int i = 0; i < limits.length; i++) {
            limits[i] = Math.log(words[i].ptCo().high() + DARKNESS_FLOOR);
        }
        return limits;
    }

    static double look(FoamLookWord look, Outlook outlook, double unsettled) {
        double expected = outlook.flooding() ? Math.max(3, outlook.logAmount()) : outlook.logAmount();
        double spread = widened(LOOK_LOG, unsettled);
        int index = look.ordinal();
        double from = index == 0 ? 1 : normalAbove(LOOK_LIMITS[index - 1], expected, spread);
        double above = index == LOOK_LIMITS.length ? 0 : normalAbove(LOOK_LIMITS[index], expected, spread);
        return Math.log((1 - MISREAD) * (from - above) + MISREAD / 6);
    }

    private static double widened(double spread, double more) {
        return more == 0 ? spread : Math.sqrt(spread * spread + more * more);
    }

    /** A person who looks at a part finds a large fault nearly always, a small one half the time. */
    static double finding(Finding finding, double faultSize) {
        double good;
        double bad;
        if (faultSize <= 0) {
            good = 0.87;
            bad = 0.02;
        } else {
            double plain = Math.min(1, 0.35 + 0.9 * faultSize);
            good = 0.45 * (1 - plain) + 0.05;
            bad = 0.15 + 0.65 * plain;
        }
        return Math.log(
                switch (finding) {
                    case GOOD -> good;
                    case BAD -> bad;
                    case DOUBTFUL -> 1 - good - bad;
                });
    }

    private static double ratio(double seen, double expected, double share) {
        double floor = 1;
        return measured(Math.log((seen + floor) / (expected + floor)), share, 6);
    }

    /**
     * Normal density or a misreading spread over a width, whichever is likelier; the sum of both would differ by at most
     * a factor of 2 where they cross, and would cost a logarithm for every reading.
     */
    private static double measured(double offset, double spread, double width) {
        double z = offset / spread;
        return Math.max(-0.5 * z * z - Math.log(spread * ROOT_TWO_PI), Math.log(MISREAD / width));
    }

    /** Chance that a normal number lies above a limit, by the logistic approximation (error under 0.01). */
    private static double normalAbove(double limit, double mean, double spread) {
        return 1 / (1 + Math.exp(1.702 * (limit - mean) / spread));
    }
}
