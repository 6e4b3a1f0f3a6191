package io.github.weirwise.trial;

/** The pages below docs that the trial's commands write. */
public final class EvidencePage {
    private static final String COMMAND = "mvn -q -Pevidence test-compile exec:exec -Devidence=%s -Dtanks=%d -Dseed=%d";

    private static final String HOW = """
            ## How it is counted

            - **Truth.** Every tank is drawn from a seed: one of the three Lantern Quay units with its own unknowns, one hidden
              cause or two, a place of the weir, what the keeper wrote down. Its steady law is the test tree's own (Rehbock weir,
              drift-flux holdup, five laws of bubble lives of which two vent at the top only, drainage with the unit's own exponent,
              merging bubbles in a third of the units) and shares no formula or parameter with the adviser; load, fouling and
              time are a small model of its own. A healthy unit reaches its target's amount within a few millimetres of the data
              sheet's level; it answers to the weir from half to one and a half times as steeply as usual. The frequencies of
              causes, their sizes and all reading errors are assumptions of the test tree, not measurements on real units.
            - **Visits.** One a day at the same hour for 14 days, and when the policy asks for one sooner. Each gives level,
              cup, darkness and foam look with errors; up to four further readings may be asked for. One change a visit.
            - **In band.** Mean amount of the last 24 h within 0.4 to 2.4 times the target, darkness within the target's range
              (waived at low load), no flood. A tank that no setting brings there counts when the policy says so and stays
              within 2 mm of the best setting.
            - **Done3.** In band at the end, every serviceable fault over a quarter of its size dealt with, at most three changes
              (weir moves and services), at most four extra readings, no weir move while something passes by itself.
            - **Harmful** is a share of weir moves: the weir was moved while a serviceable fault was the main reason, or a flood
              followed, or the noise-free amount went farther from the band by more than a tenth. A probe of at most 2 mm is not counted.
            - **Rules** are given the target's amount. The checklist looks at four parts in a fixed order and services one found
              bad. In the line for programs the best of the rules stands, figure by figure.
            - **Stated chances.** The likeliest cause is right when it acts at that moment. The chance to be in band and the 80 %
              range are held against the true mean amount over the 12 h before the stated time of judging; statements
              overtaken by a change are left out. Ten bins of equal count.
            - Tanks for tuning (`-Dphase=tune`) and for this page never share a seed.
            """;

    private EvidencePage() {}

    /** The page of the command {@code trial}. */
    public static String ofTrial(TrialReport report, int tanks, long seed) {
        return "# Evidence: the trial\n\nWritten by `" + String.format(COMMAND, "trial", tanks, seed) + "`.\n\n" + HOW
                + "\n" + report.tables() + "\n\n`" + report.resultLine() + "`\n";
    }

    /** The page of the command {@code shift}. */
    public static String ofShift(ShiftReport report, int tanks, long seed) {
        return "# Evidence: shifted settings and an adviser with parts taken out\n\nWritten by `"
                + String.format(COMMAND, "shift", tanks, seed)
                + "`. Counted as in [evidence.md](evidence.md).\n\n"
                + report.table() + "\n\n`" + report.resultLine() + "`\n";
    }
}
