package io.github.weirwise.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Plays the trial and says how it went, as a page of tables and one line for programs. */
public final class TrialReport {
    private static final int THREADS = 2;

    private final Trial trial;
    private final Score adviser;
    private final List<Score> rules;
    private final Score nothing;
    private final Score random;
    private final Score oracle;
    private final double seconds;

    private TrialReport(Trial trial) {
        this.trial = trial;
        long start = System.nanoTime();
        List<Entrant> entrants = new ArrayList<>(Field.rules());
        int ruleCount = entrants.size();
        entrants.add(Field.doNothing());
        entrants.add(Field.random());
        entrants.add(Field.oracle());
        entrants.add(Field.adviser());
        List<Score> scores = trial.play(entrants, THREADS);
        rules = scores.subList(0, ruleCount);
        nothing = scores.get(ruleCount);
        random = scores.get(ruleCount + 1);
        oracle = scores.get(ruleCount + 2);
        adviser = scores.get(ruleCount + 3);
        seconds = (System.nanoTime() - start) / 1e9;
    }

    /** Plays a phase ("report" or "tune") with a seed and a number of tanks. */
    public static TrialReport of(String phase, long seed, int tanks) {
        return new TrialReport(new Trial(phase, seed, tanks, Hardship.USUAL));
    }

    private List<Score> rivals() {
        List<Score> all = new ArrayList<>(rules);
        all.add(random);
        all.add(nothing);
        return all;
    }

    private List<Score> all() {
        List<Score> all = new ArrayList<>(List.of(oracle, adviser));
        all.addAll(rivals());
        return all;
    }

    /** All tables in Markdown. */
    public String tables() {
        Calibration causes = adviser.causeCalibration();
        Calibration band = adviser.bandCalibration();
        return String.join(
                "\n\n",
                "## Policies",
                TrialTables.policies(all()),
                "## In band after at most so many changes",
                TrialTables.byChanges(all()),
                "## The adviser against the others on the same tanks",
                TrialTables.intervals(
                        adviser, all().stream().filter(each -> each != adviser).toList()),
                "## The adviser by hidden cause",
                TrialTables.byCause(adviser, oracle),
                "Worst single cause: " + adviser.worstCause().getKey() + ".",
                "## Calibration of the adviser",
                TrialTables.calibration("likeliest cause", causes),
                TrialTables.calibration("amount in band when judged", band),
                String.format(
                        Locale.ROOT,
                        "The amount fell into the stated 80 %% range in %.4f of %d statements that could be judged.",
                        adviser.coverage80(),
                        band.count()),
                "## Causes mistaken for one another",
                TrialTables.confusion(adviser, 20));
    }

    /** The line for programs. */
    public String resultLine() {
        return String.format(
                Locale.ROOT,
                "result: tanks=%d done3=%.4f inBand3=%.4f harmful=%.4f ece=%.4f ruleDone3=%.4f ruleInBand3=%.4f"
                        + " ruleHarmful=%.4f nothingInBand3=%.4f oracleDone3=%.4f worstCauseDone3=%.4f coverage80=%.4f"
                        + " seconds=%.1f",
                trial.tanks(),
                adviser.done3(),
                adviser.inBand3(),
                adviser.harmful(),
                adviser.expectedError(),
                rules.stream().mapToDouble(Score::done3).max().orElse(0),
                rules.stream().mapToDouble(Score::inBand3).max().orElse(0),
                rules.stream().mapToDouble(Score::harmful).min().orElse(0),
                nothing.inBand3(),
                oracle.done3(),
                adviser.worstCause().getValue().done3(),
                adviser.coverage80(),
                seconds);
    }

    /** The journals of some tanks that a policy did not get done, with the truth beside them. */
    public static String failures(String phase, long seed, int tanks, int most, String policy) {
        Trial trial = new Trial(phase, seed, tanks, Hardship.USUAL);
        StringBuilder text = new StringBuilder();
        int shown = 0;
        for (int tank = 0; tank < tanks && shown < most; tank++) {
            TankPlan plan = trial.plan(tank);
            List<String> log = new ArrayList<>();
            Outcome outcome = TankRun.play(plan, Field.named(policy), log);
            if (!outcome.done(Outcome.MOST_CHANGES)) {
                shown++;
                text.append(header(tank, plan, outcome));
                log.forEach(line -> text.append(line).append('\n'));
            }
        }
        return text.toString();
    }

    private static String header(int tank, TankPlan plan, Outcome outcome) {
        return String.format(
                Locale.ROOT,
                "%n=== tank %d: %s, %s, unit %s, start crest %.1f mm%n    inBand %s, faults left %d, moved while waiting %s,"
                        + " changes %d, looks %d, harm %s%n    known: %s%n",
                tank,
                plan.label(),
                plan.ailments(),
                plan.unit().sheet().name(),
                plan.startCrestMm(),
                outcome.inBand(),
                outcome.faultsLeft(),
                outcome.movedWhileWaiting(),
                outcome.changes(),
                outcome.looks(),
                outcome.harmful(),
                plan.known());
    }
}
