package io.github.weirwise.trial;

import io.github.weirwise.report.Range;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;

/** The trial's results as Markdown tables. */
final class TrialTables {
    private TrialTables() {}

    static String policies(List<Score> scores) {
        StringJoiner table = lines(
                "| policy | done3 | inBand3 | in band | fault dealt with | harmful/move | hid fault | flooded | farther"
                        + " | moves | changes | looks | h to band (median, 90 %) | days out | removed |",
                "|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|");
        for (Score each : scores) {
            table.add(row(
                    each.name(),
                    share(each.done3()),
                    share(each.inBand3()),
                    share(each.share(Outcome::inBand)),
                    share(each.share(Outcome::dealtWith)),
                    share(each.harmful()),
                    number(each.mean(one -> one.harmful().hidFault())),
                    number(each.mean(one -> one.harmful().flooded())),
                    number(each.mean(one -> one.harmful().farther())),
                    number(each.mean(Outcome::moves)),
                    number(each.mean(Outcome::changes)),
                    number(each.mean(Outcome::looks)),
                    String.format(Locale.ROOT, "%.0f, %.0f", each.hoursToBand(0.5), each.hoursToBand(0.9)),
                    number(each.mean(Outcome::daysOut)),
                    number(each.mean(Outcome::removed))));
        }
        return table.toString();
    }

    /** In band after at most so many changes. */
    static String byChanges(List<Score> scores) {
        StringJoiner table = lines("| policy | 0 | 1 | 2 | 3 | 4 | 5 | 6 |", "|---|---|---|---|---|---|---|---|");
        for (Score each : scores) {
            String[] cells = new String[8];
            cells[0] = each.name();
            for (int most = 0; most <= 6; most++) {
                int limit = most;
                cells[most + 1] = share(each.share(one -> one.inBandWithin(limit)));
            }
            table.add(row(cells));
        }
        return table.toString();
    }

    static String byCause(Score score, Score ceiling) {
        StringJoiner table = lines(
                "| hidden cause | tanks | done3 | oracle | inBand3 | in band | dealt with | moved while waiting | harmful"
                        + "/tank | changes | looks |",
                "|---|---|---|---|---|---|---|---|---|---|---|");
        Map<String, Score> oracles = ceiling.byLabel();
        score.byLabel()
                .forEach((label, each) -> table.add(row(
                        label,
                        Integer.toString(each.outcomes().size()),
                        share(each.done3()),
                        share(oracles.get(label).done3()),
                        share(each.inBand3()),
                        share(each.share(Outcome::inBand)),
                        share(each.share(Outcome::dealtWith)),
                        share(each.share(Outcome::movedWhileWaiting)),
                        number(each.mean(one -> one.harmful().all())),
                        number(each.mean(Outcome::changes)),
                        number(each.mean(Outcome::looks)))));
        return table.toString();
    }

    /** Intervals by bootstrap, and differences on the same tanks. */
    static String intervals(Score score, List<Score> rivals) {
        StringJoiner table = lines(
                "| against | done3 minus its own, 95 % interval | inBand3 minus its own, 95 % interval |",
                "|---|---|---|");
        table.add(row(
                "(itself)",
                range(Bootstrap.of(score.outcomes(), one -> one.done(Outcome.MOST_CHANGES) ? 1 : 0)),
                range(Bootstrap.of(score.outcomes(), one -> one.inBandWithin(Outcome.MOST_CHANGES) ? 1 : 0))));
        for (Score rival : rivals) {
            table.add(row(
                    rival.name(),
                    range(Bootstrap.ofDifference(
                            score.outcomes(), rival.outcomes(), one -> one.done(Outcome.MOST_CHANGES) ? 1 : 0)),
                    range(Bootstrap.ofDifference(
                            score.outcomes(),
                            rival.outcomes(),
                            one -> one.inBandWithin(Outcome.MOST_CHANGES) ? 1 : 0))));
        }
        return table.toString();
    }

    static String calibration(String what, Calibration calibration) {
        StringJoiner table = lines("| " + what + ": stated | came | statements |", "|---|---|---|");
        for (Calibration.Bin bin : calibration.bins()) {
            table.add(row(number(bin.stated()), number(bin.came()), Integer.toString(bin.count())));
        }
        table.add("");
        table.add(String.format(
                Locale.ROOT,
                "ECE %.4f, Brier %.4f = reliability %.4f - resolution %.4f + uncertainty %.4f (to binning), log score %.4f",
                calibration.expectedError(),
                calibration.brier(),
                calibration.reliability(),
                calibration.resolution(),
                calibration.uncertainty(),
                calibration.logScore()));
        return table.toString();
    }

    /** Which cause was named first when another acted; the most frequent mistakes. */
    static String confusion(Score score, int rows) {
        StringJoiner table = lines("| acting | named first | share of statements |", "|---|---|---|");
        var told =
                score.outcomes().stream().flatMap(each -> each.told().stream()).toList();
        var counts = new java.util.TreeMap<String, Integer>();
        told.stream()
                .filter(each -> !each.topRight())
                .forEach(each -> counts.merge(each.trueCause() + " | " + each.topCause(), 1, Integer::sum));
        counts.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                .limit(rows)
                .forEach(each ->
                        table.add("| " + each.getKey() + " | " + share((double) each.getValue() / told.size()) + " |"));
        return table.toString();
    }

    private static StringJoiner lines(String... first) {
        StringJoiner joiner = new StringJoiner("\n");
        for (String line : first) {
            joiner.add(line);
        }
        return joiner;
    }

    private static String row(String... cells) {
        return "| " + String.join(" | ", cells) + " |";
    }

    static String share(double value) {
        return String.format(Locale.ROOT, "%.4f", value);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }

    private static String range(Range range) {
        return String.format(Locale.ROOT, "%.4f to %.4f", range.low(), range.high());
    }
}
