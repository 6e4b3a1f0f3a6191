package io.github.weirwise.lab;

import io.github.weirwise.report.Range;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** The tables of the page, in Markdown. */
record PanelTables(List<Played> all) {
    private static final String ADVISER = Entrant.ADVISER.name();
    private static final String KEEPER = Entrant.KEEPER.name();
    private static final String ORACLE = Entrant.ORACLE.name();

    private static String say(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }

    private static String interval(Range range) {
        return say("%.2f to %.2f", range.low(), range.high());
    }

    /** Cost against keeper and oracle, with the work at half and double. */
    String cost() {
        StringBuilder table = new StringBuilder("""
                | truth | tanks | adviser | careful keeper | oracle | adviser minus keeper, 95 % | adviser over keeper, 95 % | the same, work at half, at double | adviser over oracle |
                |---|---|---|---|---|---|---|---|---|
                """);
        for (Played played : all) {
            List<Outcome> own = played.outcomes().get(ADVISER);
            List<Outcome> keeper = played.outcomes().get(KEEPER);
            table.append(say(
                    "| %s | %d | %.2f | %.2f | %.2f | %s | %.2f (%s) | %.2f, %.2f | %.2f |%n",
                    played.truth().word(),
                    own.size(),
                    played.tally(ADVISER).cost(),
                    played.tally(KEEPER).cost(),
                    played.tally(ORACLE).cost(),
                    interval(Bootstrap.ofDifference(
                            own, keeper, each -> each.cost().total())),
                    PanelReport.ratio(played, KEEPER, each -> each.cost().total()),
                    interval(Bootstrap.ofRatio(own, keeper, each -> each.cost().total())),
                    PanelReport.ratio(played, KEEPER, each -> each.cost().total(0.5)),
                    PanelReport.ratio(played, KEEPER, each -> each.cost().total(2)),
                    PanelReport.ratio(played, ORACLE, each -> each.cost().total())));
        }
        return table.toString();
    }

    /** What was done, and what came of it, everything per 14 days. */
    String work() {
        StringBuilder table = new StringBuilder("""
                | truth | who | days out | minus the keeper's, 95 % | moves | services | needless | looks | visits asked for | floods seen | acted on | floods | air off, h | ends in band | done3 | harmful |
                |---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|
                """);
        for (Played played : all) {
            for (String name : List.of(ADVISER, KEEPER, ORACLE)) {
                Tally tally = played.tally(name);
                double per14 = 14.0 / played.truth().days();
                Range difference = Bootstrap.ofDifference(
                        tally.outcomes(),
                        played.outcomes().get(KEEPER),
                        each -> per14 * each.cost().daysOut());
                table.append(say(
                        "| %s | %s | %.2f | %s | %.2f | %.2f | %.2f | %.2f | %.2f | %.2f | %.2f | %.2f | %.1f | %.2f | %.2f | %.2f |%n",
                        played.truth().word(),
                        name,
                        per14 * tally.daysOut(),
                        name.equals(KEEPER) ? "" : interval(difference),
                        tally.per14Days(Outcome::moves),
                        tally.per14Days(Outcome::services),
                        tally.per14Days(Outcome::needless),
                        tally.per14Days(Outcome::looks),
                        tally.per14Days(Outcome::extraVisits),
                        tally.per14Days(Outcome::floodsSeen),
                        tally.floodsActedOn(),
                        tally.per14Days(each -> each.cost().floods()),
                        tally.per14Days(each -> each.cost().airOffHours()),
                        tally.mean(each -> each.endsInBand() ? 1 : 0),
                        tally.done3(),
                        tally.harmful()));
            }
        }
        return table.toString();
    }

    /** How honest the statements are. */
    String honesty() {
        StringBuilder table = new StringBuilder("""
                | truth | statements | 80 % range holds, 95 % | error of the stated chance (ECE) | log score | of "as last time" | minus it, 95 % | chance that the named part is at fault: stated, right, ECE |
                |---|---|---|---|---|---|---|---|
                """);
        for (Played played : all) {
            Tally tally = played.tally(ADVISER);
            table.append(say(
                    "| %s | %d | %.3f (%s) | %.3f | %.2f | %.2f | %s | %.2f, %.2f, %.2f |%n",
                    played.truth().word(),
                    tally.told().size(),
                    tally.coverage80(),
                    interval(overTanks(tally, each -> each.covered() ? 1 : 0)),
                    tally.inBand().expectedError(),
                    tally.logScore(),
                    tally.persistenceLogScore(),
                    interval(overTanks(tally, tally.overPersistence())),
                    tally.blame().meanStated(),
                    tally.blame().baseRate(),
                    tally.blame().expectedError()));
        }
        return table.toString();
    }

    private static Range overTanks(Tally tally, ToDoubleFunction<Outcome.Told> what) {
        return Bootstrap.of(tally.outcomes().stream()
                .filter(each -> !each.told().isEmpty())
                .mapToDouble(each -> each.told().stream()
                        .mapToDouble(what)
                        .filter(value -> !Double.isNaN(value))
                        .average()
                        .orElse(0))
                .toArray());
    }

    /** Stated chance to be in band against what came, over all truths but those left out. */
    String reliability() {
        StringBuilder table = new StringBuilder("| truth | " + "stated: came, ten bins of equal count |\n|---|---|\n");
        for (Played played : all) {
            table.append("| ").append(played.truth().word()).append(" | ");
            played.tally(ADVISER)
                    .inBand()
                    .bins()
                    .forEach(bin -> table.append(say("%.2f: %.2f; ", bin.stated(), bin.came())));
            table.append("|\n");
        }
        return table.toString();
    }

    /** Cost of all entrants. */
    String rivals() {
        StringBuilder table = new StringBuilder("| truth |");
        List<String> names = List.copyOf(all.get(0).outcomes().keySet());
        names.forEach(name -> table.append(say(" %s, 95 %% |", name)));
        table.append("\n|---|").append("---|".repeat(names.size())).append('\n');
        for (Played played : all) {
            table.append("| ").append(played.truth().word()).append(" |");
            for (String name : names) {
                Tally tally = played.tally(name);
                Range range = Bootstrap.of(tally.outcomes().stream()
                        .mapToDouble(each -> each.cost().total())
                        .toArray());
                table.append(say(" %.2f (%s) |", tally.cost(), interval(range)));
            }
            table.append('\n');
        }
        return table.toString();
    }

    /** Cost by hidden fault, the adviser against the keeper. */
    String byFault() {
        StringBuilder table = new StringBuilder("""
                | truth | hidden | tanks | adviser | keeper | oracle | adviser minus keeper, 95 % |
                |---|---|---|---|---|---|---|
                """);
        for (Played played : all) {
            for (String label : PanelReport.labels(played)) {
                List<Outcome> own = PanelReport.with(played.outcomes().get(ADVISER), label);
                List<Outcome> keeper = PanelReport.with(played.outcomes().get(KEEPER), label);
                List<Outcome> oracle = PanelReport.with(played.outcomes().get(ORACLE), label);
                table.append(say(
                        "| %s | %s | %d | %.2f | %.2f | %.2f | %s |%n",
                        played.truth().word(),
                        label.toLowerCase(Locale.ROOT).replace('_', ' '),
                        own.size(),
                        new Tally(ADVISER, played.truth(), own).cost(),
                        new Tally(KEEPER, played.truth(), keeper).cost(),
                        new Tally(ORACLE, played.truth(), oracle).cost(),
                        interval(Bootstrap.ofDifference(
                                own, keeper, each -> each.cost().total()))));
            }
        }
        return table.toString();
    }
}
