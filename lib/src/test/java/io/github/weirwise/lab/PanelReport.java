package io.github.weirwise.lab;

import io.github.weirwise.report.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** What a run of the panel comes to: the summary for programs, and where the adviser loses. */
record PanelReport(List<Played> all) {
    private static final String ADVISER = Entrant.ADVISER.name();
    private static final String KEEPER = Entrant.KEEPER.name();
    private static final String ORACLE = Entrant.ORACLE.name();
    static final Range COVERAGE_WANTED = new Range(0.75, 0.85);
    static final double MOST_ECE = 0.05;
    static final double MOST_NEEDLESS = 0.15;
    /** Fewer tanks than this make no row that could be said to lose. */
    private static final int LEAST_FOR_A_ROW = 20;

    /** Ratio of the adviser's mean to another entrant's on one truth. */
    static double ratio(Played played, String other, ToDoubleFunction<Outcome> what) {
        return played.tally(ADVISER).mean(what) / played.tally(other).mean(what);
    }

    private static double cost(Outcome outcome) {
        return outcome.cost().total();
    }

    /** Mean of the truths' ratios, the one that is nearly the ledger's own form left out. */
    private double meanRatio(String other) {
        return all.stream()
                .filter(each -> each.truth() != Truth.GENTLE || all.size() == 1)
                .mapToDouble(each -> ratio(each, other, PanelReport::cost))
                .average()
                .orElse(Double.NaN);
    }

    private double most(ToDoubleFunction<Played> what) {
        return all.stream().mapToDouble(what).max().orElse(Double.NaN);
    }

    /** The line for programs. */
    String resultLine() {
        double seconds = all.stream().mapToDouble(Played::seconds).sum();
        StringBuilder line = new StringBuilder("result: ");
        line.append(String.format(Locale.ROOT, "truths=%d", all.size()));
        if (all.get(0).has(ADVISER)) {
            line.append(String.format(
                    Locale.ROOT,
                    " meanCostOverKeeper=%.4f worstCostOverKeeper=%.4f",
                    meanRatio(KEEPER),
                    most(each -> ratio(each, KEEPER, PanelReport::cost))));
            if (all.get(0).has(ORACLE)) {
                line.append(String.format(Locale.ROOT, " meanCostOverOracle=%.4f", meanRatio(ORACLE)));
            }
            line.append(String.format(
                    Locale.ROOT,
                    " worstDaysOutOverKeeper=%.4f worstEce=%.4f lowestCoverage80=%.4f highestCoverage80=%.4f"
                            + " worstNeedless=%.4f worstLooks=%.4f",
                    most(each -> ratio(each, KEEPER, outcome -> outcome.cost().daysOut())),
                    most(each -> each.tally(ADVISER).inBand().expectedError()),
                    -most(each -> -each.tally(ADVISER).coverage80()),
                    most(each -> each.tally(ADVISER).coverage80()),
                    most(each -> each.tally(ADVISER).per14Days(Outcome::needless)),
                    most(each -> each.tally(ADVISER).per14Days(Outcome::looks))));
        }
        return line.append(String.format(Locale.ROOT, " seconds=%.1f", seconds)).toString();
    }

    /** Every figure of the bars that the adviser misses, and every hidden fault where the keeper is surely cheaper. */
    List<String> losses() {
        List<String> losses = new ArrayList<>();
        for (Played played : all) {
            Tally adviser = played.tally(ADVISER);
            List<Outcome> own = played.outcomes().get(ADVISER);
            List<Outcome> keeper = played.outcomes().get(KEEPER);
            String truth = played.truth().word();
            dearer(losses, truth + ": costs more than the careful keeper", own, keeper, PanelReport::cost);
            dearer(
                    losses,
                    truth + ": more days out of band than the careful keeper",
                    own,
                    keeper,
                    each -> each.cost().daysOut());
            missed(
                    losses,
                    truth + ": needless services in 14 days",
                    adviser.per14Days(Outcome::needless),
                    new Range(0, MOST_NEEDLESS));
            missed(losses, truth + ": stated 80 % ranges hold in", adviser.coverage80(), COVERAGE_WANTED);
            missed(
                    losses,
                    truth + ": error of the stated chance",
                    adviser.inBand().expectedError(),
                    new Range(0, MOST_ECE));
            if (adviser.logScore() < adviser.persistenceLogScore()) {
                losses.add(String.format(
                        Locale.ROOT,
                        "%s: forecasts score %.2f, \"as last time\" at its best %.2f",
                        truth,
                        adviser.logScore(),
                        adviser.persistenceLogScore()));
            }
            if (adviser.floodsActedOn() < 1) {
                losses.add(String.format(
                        Locale.ROOT,
                        "%s: of the floods seen, %.2f were acted on in the same answer",
                        truth,
                        adviser.floodsActedOn()));
            }
            for (String label : labels(played)) {
                List<Outcome> ours = with(own, label);
                if (ours.size() >= LEAST_FOR_A_ROW && !label.equals("slow fouling")) {
                    dearer(
                            losses,
                            truth + ", " + label + ": costs more than the careful keeper",
                            ours,
                            with(keeper, label),
                            PanelReport::cost);
                }
            }
        }
        return losses;
    }

    static List<String> labels(Played played) {
        return played.outcomes().values().iterator().next().stream()
                .map(Outcome::label)
                .distinct()
                .sorted()
                .toList();
    }

    static List<Outcome> with(List<Outcome> outcomes, String label) {
        return outcomes.stream().filter(each -> each.label().equals(label)).toList();
    }

    private static void dearer(
            List<String> losses,
            String what,
            List<Outcome> own,
            List<Outcome> other,
            ToDoubleFunction<Outcome> figure) {
        Range difference = Bootstrap.ofDifference(own, other, figure);
        if (difference.low() > 0) {
            losses.add(String.format(Locale.ROOT, "%s, by %.2f to %.2f", what, difference.low(), difference.high()));
        }
    }

    private static void missed(List<String> losses, String what, double figure, Range wanted) {
        if (!wanted.contains(figure)) {
            losses.add(String.format(
                    Locale.ROOT, "%s %.3f, wanted %.2f to %.2f", what, figure, wanted.low(), wanted.high()));
        }
    }
}
