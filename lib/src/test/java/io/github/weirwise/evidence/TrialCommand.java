package io.github.weirwise.evidence;

import io.github.weirwise.trial.TrialReport;

/**
 * The trial: policies on hidden tanks. Properties: {@code tanks}, {@code seed}, {@code phase} (report or tune), {@code
 * show} (print so many journals that {@code policy} did not get done, instead).
 */
final class TrialCommand implements Evidence.Command {
    @Override
    public void run(String[] options) {
        String phase = System.getProperty("phase", "report");
        long seed = Long.getLong("seed", 1);
        int tanks = Integer.getInteger("tanks", 10000);
        int show = Integer.getInteger("show", 0);
        if (show > 0) {
            System.out.println(TrialReport.failures(phase, seed, tanks, show, System.getProperty("policy", "oracle")));
            return;
        }
        TrialReport report = TrialReport.of(phase, seed, tanks);
        System.out.println(report.tables());
        System.out.println(report.resultLine());
    }
}
