package io.github.weirwise.trial;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** Counts over the outcomes of one policy, tank by tank in the order of the trial. */
record Score(String name, List<Outcome> outcomes) {
    /** Fewer tanks than this make no row that could be called the worst. */
    private static final int LEAST_FOR_WORST = 5;

    double share(Predicate<Outcome> what) {
        return mean(each -> what.test(each) ? 1 : 0);
    }

    double mean(ToDoubleFunction<Outcome> what) {
        return outcomes.stream().mapToDouble(what).average().orElse(0);
    }

    double done3() {
        return share(each -> each.done(Outcome.MOST_CHANGES));
    }

    double inBand3() {
        return share(each -> each.inBandWithin(Outcome.MOST_CHANGES));
    }

    /** Harmful moves over all weir moves; 0 without a move. */
    double harmful() {
        double moves = mean(Outcome::moves);
        return moves == 0 ? 0 : mean(each -> each.harmful().all()) / moves;
    }

    /** The same counts for every row of the table per cause. */
    Map<String, Score> byLabel() {
        return outcomes.stream()
                .collect(Collectors.groupingBy(
                        Outcome::label,
                        TreeMap::new,
                        Collectors.collectingAndThen(Collectors.toList(), some -> new Score(name, some))));
    }

    /** The row of a single cause with the fewest done; rows of very few tanks count only when there are no others. */
    Map.Entry<String, Score> worstCause() {
        List<Map.Entry<String, Score>> rows = byLabel().entrySet().stream()
                .filter(row -> !row.getKey().startsWith("pair"))
                .sorted(Comparator.comparingDouble(row -> row.getValue().done3()))
                .toList();
        return rows.stream()
                .filter(row -> row.getValue().outcomes().size() >= LEAST_FOR_WORST)
                .findFirst()
                .orElseGet(() -> rows.get(0));
    }

    /** Stated chances of the likeliest cause. */
    Calibration causeCalibration() {
        return new Calibration(outcomes.stream()
                .flatMap(each -> each.told().stream())
                .map(told -> new Calibration.Pair(told.topChance(), told.topRight()))
                .toList());
    }

    /** Stated chances of an amount in band, as far as they could be judged. */
    Calibration bandCalibration() {
        return new Calibration(outcomes.stream()
                .flatMap(each -> each.told().stream())
                .filter(Outcome.Told::judged)
                .map(told -> new Calibration.Pair(told.bandChance(), told.cameInBand()))
                .toList());
    }

    double expectedError() {
        return Math.max(causeCalibration().expectedError(), bandCalibration().expectedError());
    }

    /** How often the amount fell into the stated 80 % range. */
    double coverage80() {
        return outcomes.stream()
                .flatMap(each -> each.told().stream())
                .filter(Outcome.Told::judged)
                .mapToDouble(told -> told.inRange() ? 1 : 0)
                .average()
                .orElse(0);
    }

    /** Quantile of the hours until the first day in band, 0 to 1. */
    double hoursToBand(double quantile) {
        double[] hours =
                outcomes.stream().mapToDouble(Outcome::hourInBand).sorted().toArray();
        return hours[(int) Math.min(hours.length - 1, Math.floor(quantile * hours.length))];
    }
}
