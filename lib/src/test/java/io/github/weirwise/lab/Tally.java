package io.github.weirwise.lab;

import io.github.weirwise.lab.Outcome.Told;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Figures over the tanks of one entrant; counts are per 14 days. */
record Tally(String name, Truth truth, List<Outcome> outcomes) {
    private static final double RANGE_DEVIATIONS = 2 * 1.2815515655446004;
    private static final double LEAST_DEVIATION = 0.02;
    private static final double FIRST_DEVIATION = 0.05;
    private static final double LAST_DEVIATION = 4;
    /** A share of every forecast is spread evenly over all amounts from nothing to a flood, so that no miss costs more than this. */
    private static final double ANYTHING = 0.02;

    private static final double ANYTHING_WIDTH = 9;

    double mean(ToDoubleFunction<Outcome> what) {
        return outcomes.stream().mapToDouble(what).average().orElse(0);
    }

    double per14Days(ToDoubleFunction<Outcome> what) {
        return mean(what) * 14 / truth.days();
    }

    double cost() {
        return mean(each -> each.cost().total());
    }

    double daysOut() {
        return mean(each -> each.cost().daysOut());
    }

    double done3() {
        return mean(each -> each.done3() ? 1 : 0);
    }

    /** Harmful moves over all moves; 0 without a move. */
    double harmful() {
        double moves = mean(Outcome::moves);
        return moves == 0 ? 0 : mean(Outcome::harmful) / moves;
    }

    /** Share of floods seen that the same answer acted on; 1 when none was seen. */
    double floodsActedOn() {
        double seen = mean(Outcome::floodsSeen);
        return seen == 0 ? 1 : mean(Outcome::floodsActedOn) / seen;
    }

    List<Told> told() {
        return outcomes.stream().flatMap(each -> each.told().stream()).toList();
    }

    /** How often the stated 80 % range held; not a number without statements. */
    double coverage80() {
        return told().stream()
                .mapToDouble(each -> each.covered() ? 1 : 0)
                .average()
                .orElse(Double.NaN);
    }

    /** Calibration of the stated chance to be in band. */
    Calibration inBand() {
        return new Calibration(told().stream()
                .map(each -> new Calibration.Pair(each.chance(), each.cameInBand()))
                .toList());
    }

    /** Calibration of the stated chance that a part is at fault, where the likeliest cause blames one. */
    Calibration blame() {
        return new Calibration(told().stream()
                .filter(Told::blames)
                .map(each -> new Calibration.Pair(each.causeChance(), each.blamesRight()))
                .toList());
    }

    /** Mean log density given to the logarithm of what came, by the normal whose middle 80 % is the stated range. */
    double logScore() {
        return told().stream().mapToDouble(Tally::score).average().orElse(Double.NaN);
    }

    /** The same for "as last time", with the deviation that suits these very tanks best: persistence at its strongest. */
    double persistenceLogScore() {
        return persistenceLogScore(bestDeviation());
    }

    private double persistenceLogScore(double deviation) {
        return told().stream()
                .filter(each -> !Double.isNaN(each.before()))
                .mapToDouble(each -> logDensity(each.came(), each.before(), deviation))
                .average()
                .orElse(Double.NaN);
    }

    private double bestDeviation() {
        double best = FIRST_DEVIATION;
        double most = Double.NEGATIVE_INFINITY;
        for (double deviation = FIRST_DEVIATION; deviation < LAST_DEVIATION; deviation *= 1.15) {
            double score = persistenceLogScore(deviation);
            if (score > most) {
                most = score;
                best = deviation;
            }
        }
        return best;
    }

    /** What a statement scores over "as last time" with the deviation that suits these tanks best; NaN without a last time. */
    ToDoubleFunction<Told> overPersistence() {
        double sigma = bestDeviation();
        return each ->
                Double.isNaN(each.before()) ? Double.NaN : score(each) - logDensity(each.came(), each.before(), sigma);
    }

    private static double score(Told told) {
        return logDensity(told.came(), (told.low() + told.high()) / 2, (told.high() - told.low()) / RANGE_DEVIATIONS);
    }

    static double logDensity(double at, double mean, double deviation) {
        double sigma = Math.max(LEAST_DEVIATION, deviation);
        double z = (at - mean) / sigma;
        double normal = Math.exp(-z * z / 2) / (sigma * Math.sqrt(2 * Math.PI));
        return Math.log((1 - ANYTHING) * normal + ANYTHING / ANYTHING_WIDTH);
    }
}
