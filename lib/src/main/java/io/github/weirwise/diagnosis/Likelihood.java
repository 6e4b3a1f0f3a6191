package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Observation;
import java.util.Map;

/**
 * How likely an observation is if a possibility is true, reading type by reading type.
 *
 * <p>Measured numbers follow a normal law with a share of misreadings spread evenly over what could be read at all (heavy
 * tails); words follow ordered thresholds. Spreads are our own estimates of what a person with a ruler in bubbly water
 * can do, plus the law's own doubt; levels to 2 or 3 mm are common practice. All numbers are stated here and nowhere else.
 */
final class Likelihood {
    private static final double MISREAD = Bell.MISREAD;

    /** A ruler in bubbly water. */
    static final double LEVEL_MM = 2;

    private static final Bell LEVEL = new Bell(LEVEL_MM, 60);
    private static final Bell OUTSIDE = new Bell(1.8, 60);
    private static final double HEAD_MM = 1.2;
    private static final double HEAD_SHARE = 0.06;
    private static final double HEAD_WIDTH_MM = 40;
    /** Reading the mark, and how well a hand sets a weir. */
    private static final Bell MARK = new Bell(Math.hypot(0.9, 0.7), 30);

    private static final double BEYOND_MM = 3;
    private static final Bell BEYOND = new Bell(BEYOND_MM, 100);
    private static final double FREE_BEYOND_MM = -40;
    private static final Bell FREE_BEYOND = new Bell(25, 100);
    private static final Bell AIR = new Bell(0.07, 6);
    private static final Bell FLOW = new Bell(0.08, 6);
    private static final Bell SALT = new Bell(0.8, 40);
    private static final double AMOUNT_LOG = 0.33;
    private static final double AMOUNT_WIDTH_LOG = 9;
    private static final Bell AMOUNT = new Bell(AMOUNT_LOG, AMOUNT_WIDTH_LOG);
    private static final double DARKNESS_LOG = 0.45;
    private static final double DARKNESS_WIDTH_LOG = 6;
    private static final Bell DARKNESS = new Bell(DARKNESS_LOG, DARKNESS_WIDTH_LOG);
    private static final Bell COLLAPSE = new Bell(0.5, 6);
    private static final double LOOK_LOG = 0.8;
    /** Kinds of observation whose likelihood always has the same bell at its core. */
    private static final Map<Class<? extends Observation>, Bell> ALWAYS = Map.of(
            Observation.FunnelLevel.class, LEVEL,
            Observation.OutsideLevel.class, OUTSIDE,
            Observation.CrestAgainstMark.class, MARK,
            Observation.AirFlow.class, AIR,
            Observation.ReturnFlow.class, FLOW,
            Observation.Salinity.class, SALT,
            Observation.FoamCollapse.class, COLLAPSE,
            Observation.DarknessMatch.class, DARKNESS);

    /** Amounts below this share of the target cannot be told from nothing. */
    static final double LEAST_SHARE = 0.03;

    /** Darkness under this cannot be told from clear water, Pt-Co. */
    static final double DARKNESS_FLOOR = 30;

    private static final double LOG_LEAST_SHARE = Math.log(LEAST_SHARE);
    private static final double ANY_WORD_LOG = Math.log(0.2);
    private static final double[] WORD_LIMITS = wordLimits();
    /** Half the width of a word on the logarithm of the darkness, about. */
    private static final double HALF_WORD_LOG = 0.55;

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
            return level(level, outlook.submergenceMm(), view.unknowns().rulerBiasMm());
        }
        if (observation instanceof Observation.CupVolume cup) {
            return amount(cup, view, unsettled);
        }
        if (observation instanceof Observation.Darkness || observation instanceof Observation.DarknessMatch) {
            return darkness(observation, outlook.logAmount(), outlook.darknessPtCo(), unsettled);
        }
        if (observation instanceof Observation.FoamLook look) {
            return unsettled == 0 ? view.lookLog(look.look()) : look(look.look(), outlook, unsettled);
        }
        if (observation instanceof Observation.HeadOverCrest head) {
            double spread = widened(HEAD_MM, HEAD_SHARE * outlook.headMm());
            // A person measures from the real crest, wherever its mark says it is.
            return new Bell(spread, HEAD_WIDTH_MM).log(head.mm() - outlook.headMm());
        }
        if (observation instanceof Observation.CrestAgainstMark mark) {
            double real = view.influence().slipMm();
            return MARK.log(mark.mm() - real);
        }
        if (observation instanceof Observation.OutsideLevel outside) {
            return OUTSIDE.log(outside.mm() - outlook.outsideMm());
        }
        if (observation instanceof Observation.AirFlow air) {
            return ratio(air.litresPerHour(), outlook.airLitresPerHour(), AIR);
        }
        if (observation instanceof Observation.ReturnFlow flow) {
            double real = view.settings().flowLitresPerHour()
                    * view.unknowns().flowScale()
                    * view.influence().flowFactor();
            return ratio(flow.litresPerHour(), real, FLOW);
        }
        if (observation instanceof Observation.LevelBeyondWeir beyond) {
            return beyond(beyond.mm(), view.beyondMm());
        }
        if (observation instanceof Observation.Salinity salinity) {
            double real = view.settings().practicalSalinity() + view.influence().salinityShift();
            return SALT.log(salinity.practicalSalinity() - real);
        }
        if (observation instanceof Observation.FoamCollapse collapse) {
            double real = view.unit().traits().meanLifeSeconds()
                    * view.unknowns().lifeScale()
                    * view.influence().lifeFactor();
            return COLLAPSE.log(Math.log(collapse.seconds() / real));
        }
        if (observation instanceof Observation.Inspection inspection) {
            return finding(inspection.finding(), view.faultSize(inspection.part()));
        }
        return 0;
    }

    /** The greatest logarithm of the likelihood that an observation can have, whatever is true. */
    static double most(Observation observation) {
        if (observation instanceof Observation.CupVolume cup) {
            return cup.full() ? 0 : AMOUNT.peak();
        }
        if (observation instanceof Observation.HeadOverCrest) {
            return new Bell(HEAD_MM, HEAD_WIDTH_MM).peak();
        }
        if (observation instanceof Observation.LevelBeyondWeir) {
            return BEYOND.peak();
        }
        Bell bell = ALWAYS.get(observation.getClass());
        return bell == null ? 0 : bell.peak();
    }

    /** Level by ruler; each reader's eye has a bias of its own. */
    static double level(Observation.FunnelLevel level, double submergenceMm, double biasMm) {
        return LEVEL.log(level.mm() - submergenceMm - biasMm);
    }

    /** A free weir may have the water beyond anywhere below its crest, but not above it. */
    private static double beyond(double seenMm, double drownedByMm) {
        if (drownedByMm > 0) {
            return BEYOND.log(seenMm - drownedByMm);
        }
        return seenMm > BEYOND_MM ? Math.log(MISREAD / 100) : FREE_BEYOND.log(seenMm - FREE_BEYOND_MM);
    }

    private static double amount(Observation.CupVolume cup, View view, double unsettled) {
        double target = view.unit().target().skimmateMlPerDay();
        double seen = Math.log(cup.mlPerDay() / target + LEAST_SHARE);
        double expected = view.logAmountSeen();
        double spread = widened(AMOUNT_LOG, 0.8 * unsettled);
        if (cup.full()) {
            return Math.log((1 - MISREAD) * normalAbove(seen, expected, spread) + MISREAD * 0.5);
        }
        Bell bell = unsettled == 0 ? AMOUNT : new Bell(spread, AMOUNT_WIDTH_LOG);
        return bell.log(seen - expected);
    }

    /** Whether there is enough in the cup for its darkness to mean anything. */
    static boolean showsDarkness(double logAmount) {
        return logAmount >= LOG_LEAST_SHARE;
    }

    /** A darkness matched to a card, or said by a word, where the expected darkness is so many Pt-Co. */
    static double darkness(Observation observation, double logAmount, double ptCo, double unsettled) {
        double expected = Math.log(ptCo + DARKNESS_FLOOR);
        if (observation instanceof Observation.Darkness said) {
            // Next to nothing in the cup: what is there may be any old residue.
            return showsDarkness(logAmount) ? word(said.word(), expected, unsettled) : ANY_WORD_LOG;
        }
        double offset = logDarkness(observation) - expected;
        return unsettled == 0
                ? DARKNESS.log(offset)
                : new Bell(widened(DARKNESS_LOG, unsettled), DARKNESS_WIDTH_LOG).log(offset);
    }

    /** About what darkness was seen, as a logarithm with the floor. */
    static double logDarkness(Observation observation) {
        if (observation instanceof Observation.DarknessMatch match) {
            return Math.log(match.ptCo() + DARKNESS_FLOOR);
        }
        int index = ((Observation.Darkness) observation).word().ordinal();
        double low = index == 0 ? WORD_LIMITS[0] - 2 * HALF_WORD_LOG : WORD_LIMITS[index - 1];
        double high = index == WORD_LIMITS.length ? low + 2 * HALF_WORD_LOG : WORD_LIMITS[index];
        return 0.5 * (low + high);
    }

    /** How well it says so. */
    static double darknessSpread(Observation observation, double unsettled) {
        boolean matched = observation instanceof Observation.DarknessMatch;
        return Math.hypot(matched ? DARKNESS_LOG : Math.hypot(DARKNESS_LOG, HALF_WORD_LOG), unsettled);
    }

    private static double word(DarknessWord word, double expected, double unsettled) {
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

    private static double ratio(double seen, double expected, Bell bell) {
        double floor = 1;
        return bell.log(Math.log((seen + floor) / (expected + floor)));
    }

    /** Chance that a normal number lies above a limit, by the logistic approximation (error under 0.01). */
    private static double normalAbove(double limit, double mean, double spread) {
        return 1 / (1 + Math.exp(1.702 * (limit - mean) / spread));
    }
}
