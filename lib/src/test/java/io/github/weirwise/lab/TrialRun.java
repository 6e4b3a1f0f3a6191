package io.github.weirwise.lab;

import java.util.List;
import java.util.Locale;

/**
 * Command {@code trial}: one truth ({@code truth}, classic unless said), adviser, careful keeper and oracle. Properties as for
 * {@link PanelRun}.
 *
 * @param played the tanks
 */
public record TrialRun(Played played) {
    private static final int USUAL = 10000;

    /** Plays as the properties say, prints a line, a table by hidden fault and the line for programs. */
    public static void run() {
        PanelRun run = PanelRun.fromProperties(Truth.CLASSIC.word(), USUAL);
        for (Truth truth : run.truths()) {
            Played played = Played.of(truth, run.phase(), run.seed(), run.tanks(), run.entrants());
            System.out.println(PanelLine.of(played));
            System.out.print(PanelLine.byFault(played));
            if (run.show() > 0) {
                System.out.println(run.dearest(played));
            }
            System.out.println(new TrialRun(played).resultLine());
        }
    }

    /** Seconds that the adviser alone takes for so many tanks of truth "classic" on two threads. */
    public static double adviserSeconds(int tanks, long seed) {
        return Played.of(Truth.CLASSIC, "tune", seed, tanks, List.of(Entrant.ADVISER))
                .seconds();
    }

    private String resultLine() {
        StringBuilder line = new StringBuilder(
                String.format(Locale.ROOT, "result: tanks=%d", played.seeds().size()));
        boolean adviser = played.has(Entrant.ADVISER.name());
        if (adviser) {
            Tally own = played.tally(Entrant.ADVISER.name());
            line.append(String.format(Locale.ROOT, " cost=%.4f", own.cost()));
        }
        Tally keeper = played.tally(Entrant.KEEPER.name());
        line.append(String.format(Locale.ROOT, " keeperCost=%.4f", keeper.cost()));
        if (played.has(Entrant.ORACLE.name())) {
            line.append(String.format(
                    Locale.ROOT,
                    " oracleCost=%.4f",
                    played.tally(Entrant.ORACLE.name()).cost()));
        }
        if (adviser) {
            Tally own = played.tally(Entrant.ADVISER.name());
            line.append(String.format(
                    Locale.ROOT,
                    " daysOut=%.4f keeperDaysOut=%.4f needless=%.4f looks=%.4f floodsActedOn=%.4f airOffHours=%.4f"
                            + " done3=%.4f harmful=%.4f ece=%.4f coverage80=%.4f logScore=%.4f persistenceLogScore=%.4f",
                    per14(own.daysOut()),
                    per14(keeper.daysOut()),
                    own.per14Days(Outcome::needless),
                    own.per14Days(Outcome::looks),
                    own.floodsActedOn(),
                    own.per14Days(each -> each.cost().airOffHours()),
                    own.done3(),
                    own.harmful(),
                    own.inBand().expectedError(),
                    own.coverage80(),
                    own.logScore(),
                    own.persistenceLogScore()));
        }
        return line.append(String.format(Locale.ROOT, " seconds=%.1f", played.seconds()))
                .toString();
    }

    private double per14(double value) {
        return value * 14 / played.truth().days();
    }
}
