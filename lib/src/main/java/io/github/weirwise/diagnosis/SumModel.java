package io.github.weirwise.diagnosis;

import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.PartEffect;
import io.github.weirwise.unit.Sheet;
import io.github.weirwise.unit.Sum;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The sums of level and amount as functions of the state, with their gradients, for one setting of the unit.
 *
 * <p>All are straight lines in the state but the amount, where slope and air exponent multiply what they act on; it is bent, since
 * foam that hardly reaches the lip gives out all at once.
 */
final class SumModel {
    /** Logarithm of the amount over the wanted one that neither drought nor stream exceeds; e^4.5 is 90. */
    static final double MOST = 4.5;
    /** Less than this is nothing. */
    private static final double FARTHEST_LOG = 9;
    /** Power of the margin over broken foam: between the law of sharp lives (6) and gentle ones (2 to 4); stated judgement. */
    private static final double POWER = 5;
    /** With less margin than this a straight line goes on. */
    private static final double LEAST_MARGIN = 0.25;

    /** Head over a weir goes with the flow to the power 2/3 (ISO 1438). */
    private static final double HEAD_EXPONENT = 2.0 / 3;

    private static final double FARTHEST_MM = 150;

    private final Sheet sheet;
    private final double[] base = new double[Sum.values().length];
    private final Line[] lines;
    private final Line gas;
    private final Line film;

    SumModel(Sheet sheet) {
        this.sheet = sheet;
        base[Sum.HEAD.ordinal()] = sheet.headMm();
        base[Sum.CLEAR_LEVEL.ordinal()] = sheet.clearLevelMm();
        base[Sum.LEVEL.ordinal()] = sheet.levelMm();
        double[][] factors = new double[Sum.values().length][State.SIZE];
        double[] ofGas = new double[State.SIZE];
        double[] ofFilm = new double[State.SIZE];
        factors[Sum.LEVEL.ordinal()][State.OFFSET] = 1;
        for (Part part : Part.SERVICEABLE) {
            int at = State.of(part);
            ofGas[at] = -(part.worst().airLog() + part.worst().gasLog());
            ofFilm[at] = part.worst().amountLog();
            add(part, at, factors);
        }
        lines = Arrays.stream(factors).map(Line::new).toArray(Line[]::new);
        gas = new Line(ofGas);
        film = new Line(ofFilm);
    }

    private void add(Part part, int at, double[][] factors) {
        PartEffect worst = part.worst();
        double head = -sheet.headMm() * HEAD_EXPONENT * worst.flowLog();
        double crest = part == Part.WEIR_PLATE ? worst.levelMm() : 0;
        double backedUp = part == Part.FILTER_PAD ? worst.levelMm() : 0;
        factors[Sum.AIR.ordinal()][at] = -worst.airLog();
        factors[Sum.FLOW.ordinal()][at] = -worst.flowLog();
        factors[Sum.CREST.ordinal()][at] = crest;
        factors[Sum.HEAD.ordinal()][at] = head + backedUp;
        factors[Sum.CLEAR_LEVEL.ordinal()][at] = crest + head + backedUp;
        factors[Sum.LEVEL.ordinal()][at] =
                head + worst.levelMm() - sheet.gasLiftMm() * (worst.airLog() + worst.gasLog());
    }

    private Line line(Sum sum) {
        return lines[sum.ordinal()];
    }

    Sheet sheet() {
        return sheet;
    }

    /** A sum at a state. */
    double value(Sum sum, double[] state) {
        return sum == Sum.AMOUNT ? bent(rawAmount(state)) : straight(sum, state);
    }

    /** A sum at a state, and its gradient there. */
    double value(Sum sum, double[] state, double[] gradient) {
        if (sum != Sum.AMOUNT) {
            System.arraycopy(line(sum).factors, 0, gradient, 0, State.SIZE);
            return straight(sum, state);
        }
        double raw = rawAmount(state, gradient);
        double bend = bend(raw);
        for (int i = 0; i < State.SIZE; i++) {
            gradient[i] *= bend;
        }
        return bent(raw);
    }

    private double straight(Sum sum, double[] state) {
        return base[sum.ordinal()] + line(sum).at(state);
    }

    /** The amount before it is bent. */
    double rawAmount(double[] state) {
        double overWanted = overWanted(state);
        return state[State.FOAM]
                + state[State.PASSING]
                + Math.exp(state[State.SLOPE]) * overWanted
                + state[State.AIR_EXPONENT] * gasLog(state)
                + film.at(state);
    }

    /** The amount before it is bent, and its gradient. */
    double rawAmount(double[] state, double[] gradient) {
        double slope = Math.exp(state[State.SLOPE]);
        double exponent = state[State.AIR_EXPONENT];
        double[] level = line(Sum.LEVEL).factors;
        double[] ofGas = gas.factors;
        double[] ofFilm = film.factors;
        for (int i = 0; i < State.SIZE; i++) {
            gradient[i] = slope * level[i] + exponent * ofGas[i] + ofFilm[i];
        }
        double overWanted = overWanted(state);
        double gasLog = gasLog(state);
        gradient[State.FOAM] += 1;
        gradient[State.PASSING] += 1;
        gradient[State.SLOPE] += slope * overWanted;
        gradient[State.AIR_EXPONENT] += gasLog;
        return state[State.FOAM] + state[State.PASSING] + slope * overWanted + exponent * gasLog + film.at(state);
    }

    /** Level over the wanted one, mm; so far off that nothing more changes, it stays there. */
    private double overWanted(double[] state) {
        double over = straight(Sum.LEVEL, state) - sheet.wantedLevelMm();
        return Math.max(-FARTHEST_MM, Math.min(FARTHEST_MM, over));
    }

    /** Gas that reaches the foam over the rated air, a logarithm. */
    double gasLog(double[] state) {
        return sheet.airLog() + gas.at(state);
    }

    /** What one of a part's size does to the gas that reaches the foam, a logarithm. */
    double gasLogOf(Part part) {
        return gas.factors[State.of(part)];
    }

    /** What one of a part's size does to the level, mm. */
    double levelMmOf(Part part) {
        return line(Sum.LEVEL).factors[State.of(part)];
    }

    /** What one of a part's size does to the amount directly, a logarithm. */
    double filmLogOf(Part part) {
        return film.factors[State.of(part)];
    }

    /**
     * The amount's logarithm. The gas that reaches the lip goes as a power of a margin over the foam that breaks on the way
     * (docs/reference/model.md, foam life), so nearly dry foam gives out faster than a straight line says, and wet foam grows more
     * slowly: amount = (1 + raw / power)^power.
     */
    static double bent(double raw) {
        double margin = 1 + raw / POWER;
        return margin > LEAST_MARGIN
                ? POWER * Math.log(margin)
                : Math.max(-FARTHEST_LOG, POWER * (Math.log(LEAST_MARGIN) + (margin - LEAST_MARGIN) / LEAST_MARGIN));
    }

    /** The amount before it is bent, from its logarithm: readings are taken in there, where all is nearly straight. */
    static double unbent(double log) {
        return POWER * (Math.exp(Math.max(POWER * Math.log(LEAST_MARGIN), log) / POWER) - 1);
    }

    /** Standard deviation of the bent amount, by that of the one before. */
    static double bentSd(double raw, double sd) {
        return Math.min(MOST, sd * bend(raw));
    }

    /** Slope of the bend. */
    static double bend(double raw) {
        return 1 / Math.max(LEAST_MARGIN, 1 + raw / POWER);
    }

    /** A straight line in the state that most components have no part in. */
    private static final class Line {
        private final double[] factors;
        private final int[] at;

        Line(double[] factors) {
            this.factors = factors;
            this.at = IntStream.range(0, factors.length)
                    .filter(i -> factors[i] != 0)
                    .toArray();
        }

        double at(double[] state) {
            double sum = 0;
            for (int i : at) {
                sum += factors[i] * state[i];
            }
            return sum;
        }
    }
}
