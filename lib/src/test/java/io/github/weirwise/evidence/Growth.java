package io.github.weirwise.evidence;

import io.github.weirwise.lab.TrialRun;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Command {@code growth}: how time grows with the length of a journal, with the possibilities in a belief, with the tanks of a
 * trial and with the units of a fleet; writes its part of docs/reference/performance.md.
 */
final class Growth {
    private static final int[] ENTRIES = {1, 3, 10, 30, 100, 300};
    private static final int[] POSSIBILITIES = {200, 400, 600, 1200, 2400, 4800};
    /** How often the smallest trial and the smallest fleet are doubled. */
    private static final int DOUBLINGS = 2;

    private final StringBuilder text = new StringBuilder();

    private Growth() {}

    static DocumentPart part() {
        return new DocumentPart(Path.of("docs", "reference", "performance.md"), "growth");
    }

    static void run(String[] options) throws Exception {
        new Growth().all(Integer.getInteger("smallestTrial", 50), Integer.getInteger("smallestFleet", 1000));
    }

    private void all(int smallestTrial, int smallestFleet) throws Exception {
        say("Machine: " + BenchPage.machine() + ". The time of one advice, medians in ms on one thread:\n\n");
        double perEntryMs = advice();
        double[] last = many(smallestTrial, smallestFleet);
        part().write(text.toString());
        System.out.printf(
                Locale.ROOT,
                "result: perEntryMs=%.3f perTankSeconds=%.3f perUnitMs=%.3f%n",
                perEntryMs,
                last[0],
                last[1]);
    }

    private void say(String form, Object... values) {
        String more = values.length == 0 ? form : String.format(Locale.ROOT, form, values);
        text.append(more);
        System.out.print(more);
    }

    /** Both tables side by side; gives back what an entry of a long journal adds, ms. */
    private double advice() {
        say("""
                | journal entries | ms | | possibilities in the belief, 30 entries | ms |
                |---|---|---|---|---|
                """);
        AdviceScene thirty = new AdviceScene(30);
        double[] taken = new double[ENTRIES.length];
        for (int i = 0; i < ENTRIES.length; i++) {
            AdviceScene scene = new AdviceScene(ENTRIES[i]);
            int many = POSSIBILITIES[i];
            taken[i] = Bench.medianMs(scene::advise, 60, 41);
            double byBelief = Bench.medianMs(() -> thirty.advise(many), 20, 21);
            say("| %d | %.2f | | %d | %.2f |%n", ENTRIES[i], taken[i], many, byBelief);
        }
        int last = ENTRIES.length - 1;
        return (taken[last] - taken[last - 1]) / (ENTRIES[last] - ENTRIES[last - 1]);
    }

    /** Many tanks and many units; gives back seconds a tank and ms a unit of the largest. */
    private double[] many(int smallestTrial, int smallestFleet) throws Exception {
        say("""

                The trial (command `trial`: here the adviser alone, 14 days a tank) and the fleet (command `fleet`: one assessment a unit), each on two \
                threads, here in one program that is warm:

                | tanks in the trial | s | s a tank | | units in the fleet | s | ms a unit |
                |---|---|---|---|---|---|---|
                """);
        TrialRun.adviserSeconds(Math.max(1, smallestTrial / 4), 2);
        FleetRun.seconds(Math.max(1, smallestFleet / 4), 2);
        double[] last = new double[2];
        for (int i = 0; i <= DOUBLINGS; i++) {
            int tanks = smallestTrial << i;
            int units = smallestFleet << i;
            double trial = TrialRun.adviserSeconds(tanks, 1);
            double fleet = FleetRun.seconds(units, 1);
            last[0] = trial / tanks;
            last[1] = 1e3 * fleet / units;
            say("| %d | %.1f | %.3f | | %d | %.1f | %.2f |%n", tanks, trial, last[0], units, fleet, last[1]);
        }
        return last;
    }
}
