package io.github.weirwise.evidence;

import io.github.weirwise.trial.EvidencePage;
import io.github.weirwise.trial.ShiftReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Shift tests and ablations. Properties as for the trial; with at least 200 reporting tanks it writes docs/shift.md. */
final class ShiftCommand implements Evidence.Command {
    private static final int FULL = 1000;
    private static final int ENOUGH_FOR_THE_PAGE = 200;

    @Override
    public void run(String[] options) throws IOException {
        String phase = System.getProperty("phase", "report");
        long seed = Long.getLong("seed", 1);
        int tanks = Math.min(FULL, Integer.getInteger("tanks", FULL));
        ShiftReport report = ShiftReport.of(phase, seed, tanks);
        if (phase.equals("report") && tanks >= ENOUGH_FOR_THE_PAGE) {
            Files.writeString(Path.of("docs", "shift.md"), EvidencePage.ofShift(report, tanks, seed));
        }
        System.out.println(report.table());
        System.out.println(report.resultLine());
    }
}
