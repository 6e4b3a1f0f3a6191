package io.github.weirwise.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Plays the panel and says one line a truth; the quick look for those who build. */
public final class PanelLine {
    private PanelLine() {}

    /** Entrants of the quick look. */
    static List<Entrant> entrants(boolean adviser, boolean oracle) {
        List<Entrant> all = new ArrayList<>();
        if (adviser) {
            all.add(Entrant.ADVISER);
        }
        all.add(Entrant.KEEPER);
        if (oracle) {
            all.add(Entrant.ORACLE);
        }
        return all;
    }

    /** Cost and days out of every entrant by hidden fault. */
    static String byFault(Played played) {
        StringBuilder lines = new StringBuilder();
        List<Outcome> first = played.outcomes().values().iterator().next();
        for (String label :
                first.stream().map(Outcome::label).distinct().sorted().toList()) {
            lines.append(String.format(Locale.ROOT, "  %-18s", label));
            played.outcomes().forEach((name, outcomes) -> {
                Tally tally = new Tally(
                        name,
                        played.truth(),
                        outcomes.stream()
                                .filter(each -> each.label().equals(label))
                                .toList());
                lines.append(String.format(
                        Locale.ROOT,
                        " | %s n %d cost %.2f out %.2f end %.2f moves %.1f services %.1f",
                        name,
                        tally.outcomes().size(),
                        tally.cost(),
                        tally.daysOut(),
                        tally.mean(each -> each.endsInBand() ? 1 : 0),
                        tally.mean(Outcome::moves),
                        tally.mean(Outcome::services)));
            });
            lines.append('\n');
        }
        return lines.toString();
    }

    static String of(Played played) {
        StringBuilder line = new StringBuilder(
                String.format(Locale.ROOT, "%-8s", played.truth().word()));
        for (String name : played.outcomes().keySet()) {
            Tally tally = played.tally(name);
            line.append(String.format(
                    Locale.ROOT,
                    " | %s cost %.2f out %.2f end %.2f moves %.2f services %.2f needless %.2f",
                    name,
                    tally.cost(),
                    tally.daysOut(),
                    tally.mean(each -> each.endsInBand() ? 1 : 0),
                    tally.per14Days(Outcome::moves),
                    tally.per14Days(Outcome::services),
                    tally.per14Days(Outcome::needless)));
            if (name.equals(Entrant.ADVISER.name())) {
                line.append(String.format(
                        Locale.ROOT,
                        " looks %.2f visits %.2f floods %.2f acted %.2f off h %.1f ece %.3f cover %.3f log %.2f (last time %.2f) blame ece %.2f",
                        tally.per14Days(Outcome::looks),
                        tally.per14Days(Outcome::extraVisits),
                        tally.per14Days(Outcome::floodsSeen),
                        tally.floodsActedOn(),
                        tally.per14Days(each -> each.cost().airOffHours()),
                        tally.inBand().expectedError(),
                        tally.coverage80(),
                        tally.logScore(),
                        tally.persistenceLogScore(),
                        tally.blame().expectedError()));
            }
        }
        return line.append(String.format(Locale.ROOT, " | %.1f s", played.seconds()))
                .toString();
    }
}
