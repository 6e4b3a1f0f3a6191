package io.github.weirwise.evidence;

import io.github.weirwise.trial.EvidencePage;
import io.github.weirwise.trial.TrialReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The trial: policies on hidden tanks. Properties: {@code tanks}, {@code seed}, {@code phase} (report or tune), {@code
 * show} (print so many journals that {@code policy} did not get done, instead). A trial of at least 2,000 reporting
 * tanks writes docs/evidence.md.
 */
final class TrialCommand implements Evidence.Command {
    private static final int FULL = 10000;
    private static final int ENOUGH_FOR_THE_PAGE = 2000;

    @Override
    public void run(String[] options) throws IOException {
        String phase = System.getProperty("phase", "tune");
        long seed = Long.getLong("seed", 1);
        int tanks = Integer.getInteger("tanks", FULL);
        int show = Integer.getInteger("show", 0);
        if (show > 0) {
            System.out.println(TrialReport.failures(phase, seed, tanks, show, System.getProperty("policy", "adviser")));
            return;
        }
        TrialReport report = TrialReport.of(phase, seed, tanks);
        if (phase.equals("report") && tanks >= ENOUGH_FOR_THE_PAGE) {
            Files.writeString(Path.of("docs", "evidence.md"), EvidencePage.ofTrial(report, tanks, seed));
        }
        System.out.println(report.tables());
        System.out.println(report.resultLine());
    }
}
