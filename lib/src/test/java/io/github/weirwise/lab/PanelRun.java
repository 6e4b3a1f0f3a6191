package io.github.weirwise.lab;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Command {@code panel}: all truths. Properties: {@code tanks} of each truth, {@code seed}, {@code phase} (tune, the default, or
 * report), {@code truth} (one or several by comma), {@code oracle=false} and {@code adviser=false} to leave them out, {@code show}
 * to print the dearest plays of the first entrant too, {@code faults=true} for a table by hidden fault.
 *
 * @param truths families to play
 * @param phase tune or report
 * @param seed the seed of seeds
 * @param tanks of each truth
 * @param entrants who plays
 * @param show how many plays to print
 */
public record PanelRun(List<Truth> truths, String phase, long seed, int tanks, List<Entrant> entrants, int show) {
    private static final int USUAL = 40;
    private static final int ENOUGH_FOR_THE_PAGE = 500;

    /** As the properties say. */
    public static PanelRun fromProperties() {
        return fromProperties("", USUAL);
    }

    /** As the properties say, with other truths and another number of tanks where they say nothing. */
    static PanelRun fromProperties(String usualTruths, int usualTanks) {
        String given = System.getProperty("truth", "");
        String truths = given.isEmpty() ? usualTruths : given;
        String phase = System.getProperty("phase", "tune");
        return new PanelRun(
                truths.isEmpty()
                        ? List.of(Truth.values())
                        : Arrays.stream(truths.split(",")).map(Truth::named).toList(),
                phase,
                Long.getLong("seed", 1),
                Integer.getInteger("tanks", usualTanks),
                entrants(phase),
                Integer.getInteger("show", 0));
    }

    /** All when reporting; while building only those that are looked at. */
    private static List<Entrant> entrants(String phase) {
        boolean adviser = Boolean.parseBoolean(System.getProperty("adviser", "true"));
        boolean oracle = Boolean.parseBoolean(System.getProperty("oracle", "true"));
        return phase.equals("report") && adviser && oracle ? Entrant.ALL : PanelLine.entrants(adviser, oracle);
    }

    /** Plays, prints a line a truth, and writes the page when there are tanks enough. */
    public void run() throws IOException {
        List<Played> all = new ArrayList<>();
        for (Truth truth : truths) {
            Played played = Played.of(truth, phase, seed, tanks, entrants);
            all.add(played);
            System.out.println(PanelLine.of(played));
            if (Boolean.getBoolean("faults")) {
                System.out.print(PanelLine.byFault(played));
            }
            if (show > 0) {
                System.out.println(dearest(played));
            }
        }
        PanelReport report = new PanelReport(all);
        if (phase.equals("report")
                && tanks >= ENOUGH_FOR_THE_PAGE
                && entrants.equals(Entrant.ALL)
                && truths.size() == Truth.values().length) {
            Files.writeString(Path.of("docs", "reference", "evidence.md"), PanelPage.of(report, tanks, seed));
        }
        System.out.println(report.resultLine());
    }

    String dearest(Played played) {
        Entrant entrant = entrants.get(0);
        List<Outcome> outcomes = played.outcomes().get(entrant.name());
        return java.util.stream.IntStream.range(0, outcomes.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -outcomes.get(i).cost().total()))
                .limit(show)
                .map(i -> shown(played.truth(), played.seeds().get(i), entrant))
                .collect(Collectors.joining("\n"));
    }

    private static String shown(Truth truth, long seed, Entrant entrant) {
        Plan plan = new PlanDraw(truth, seed).draw();
        Trace trace = new Trace();
        Outcome outcome = Play.of(plan, entrant, trace);
        return String.format(
                        Locale.ROOT,
                        "%n--- %s, %s, %s: %s cost %.2f (work %.2f) days out %.2f floods %d%n",
                        truth.word(),
                        plan.sheet().name(),
                        plan.label(),
                        entrant.name(),
                        outcome.cost().total(),
                        outcome.cost().work(),
                        outcome.cost().daysOut(),
                        outcome.cost().floods())
                + String.join("\n", trace.lines());
    }
}
