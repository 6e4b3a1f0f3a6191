package io.github.weirwise.evidence;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Command {@code coverage}: the tests run under JaCoCo, and the lines and branches that they pass through, added up. */
final class Coverage {
    private static final Path ROOT = Path.of("").toAbsolutePath();

    /** Columns of JaCoCo's table. */
    private static final int PACKAGE = 1;

    private static final int BRANCHES_MISSED = 5;
    private static final int LINES_MISSED = 7;

    /** What was passed through and what was missed. */
    private record Count(int classes, int branches, int branchesMissed, int lines, int linesMissed) {
        static final Count NONE = new Count(0, 0, 0, 0, 0);

        static Count of(String[] row) {
            int branchesMissed = Integer.parseInt(row[BRANCHES_MISSED]);
            int linesMissed = Integer.parseInt(row[LINES_MISSED]);
            return new Count(
                    1,
                    branchesMissed + Integer.parseInt(row[BRANCHES_MISSED + 1]),
                    branchesMissed,
                    linesMissed + Integer.parseInt(row[LINES_MISSED + 1]),
                    linesMissed);
        }

        Count plus(Count other) {
            return new Count(
                    classes + other.classes,
                    branches + other.branches,
                    branchesMissed + other.branchesMissed,
                    lines + other.lines,
                    linesMissed + other.linesMissed);
        }

        double linePct() {
            return 100.0 * (lines - linesMissed) / Math.max(1, lines);
        }

        double branchPct() {
            return 100.0 * (branches - branchesMissed) / Math.max(1, branches);
        }
    }

    private Coverage() {}

    static void run() throws IOException, InterruptedException {
        new MavenRun(ROOT, ROOT.resolve("lib/target/coverage.log"))
                .run(
                        "-Pcoverage",
                        "-pl",
                        "lib",
                        "test",
                        "-Dtest=" + System.getProperty("tests", "*Test"),
                        "-Dsurefire.failIfNoSpecifiedTests=false");
        List<String> rows = Files.readAllLines(ROOT.resolve("lib/target/site/jacoco/jacoco.csv"));
        Map<String, Count> packages = new TreeMap<>();
        for (String row : rows.subList(1, rows.size())) {
            String[] cells = row.split(",");
            packages.merge(cells[PACKAGE], Count.of(cells), Count::plus);
        }
        packages.forEach((name, count) -> System.out.printf(
                "%-36s lines %5.1f %%  branches %5.1f %%%n", name, count.linePct(), count.branchPct()));
        Count all = packages.values().stream().reduce(Count.NONE, Count::plus);
        System.out.printf(
                "result: linePct=%.1f branchPct=%.1f classes=%d%n", all.linePct(), all.branchPct(), all.classes());
    }
}
