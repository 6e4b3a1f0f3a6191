package io.github.weirwise.evidence;

import io.github.weirwise.Weirwise;
import io.github.weirwise.json.Request;
import io.github.weirwise.json.WeirwiseJson;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Command {@code fleet}: many units assessed in one process of bounded memory, and a part of them by the example in
 * docs/examples/flink, whose answers must be those of the plain run to the letter.
 */
final class Fleet {
    private static final Path ROOT = Path.of("").toAbsolutePath();
    private static final String HEAP = "-Xmx256m";
    /** Units that the engine gets; starting it costs far more than these. */
    private static final long ENGINE_UNITS = 200;
    /** Among so many visits one is broken. */
    private static final int EACH_BROKEN = 20;

    private int brokenVisits;

    private final long units = Long.getLong("units", 100_000);
    private final long seed = Long.getLong("seed", 1);

    private Fleet() {}

    static void run() throws Exception {
        Fleet fleet = new Fleet();
        String[] plain = fleet.plain();
        EngineRun engine = fleet.engine();
        System.out.printf(
                Locale.ROOT,
                "result: units=%s seconds=%.1f peakHeapMb=%s entries=%.1f coreMs=%.2f settledEntries=%.1f settledCoreMs=%.2f"
                        + " keptBytes=%s keptCoreMs=%.2f engineEqual=%d engineUnits=%d engineRefused=%d engineRestarts=%d%n",
                plain[0],
                Double.parseDouble(plain[1]),
                plain[2],
                Double.parseDouble(plain[3]),
                Double.parseDouble(plain[4]),
                Double.parseDouble(plain[5]),
                Double.parseDouble(plain[6]),
                plain[7],
                Double.parseDouble(plain[8]),
                engine.equal() ? 1 : 0,
                fleet.engineUnits(),
                engine.refused(),
                engine.restarts());
        if (!engine.equal() || engine.restarts() == 0) {
            throw new IllegalStateException(
                    "the engine's answers are not those of the plain run, or it was never stopped");
        }
    }

    private long engineUnits() {
        return Math.min(units, ENGINE_UNITS);
    }

    /** In a process of its own, so that its heap is bounded and its peak is its own. */
    private String[] plain() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        HEAP,
                        "-cp",
                        System.getProperty("java.class.path"),
                        FleetRun.class.getName(),
                        Long.toString(units),
                        Long.toString(seed))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        List<String> lines =
                new String(process.getInputStream().readAllBytes()).lines().toList();
        if (process.waitFor() != 0) {
            throw new IllegalStateException("the fleet's process failed: " + lines);
        }
        System.out.println("Assessed on two threads with " + HEAP + ":");
        lines.subList(0, lines.size() - 1).forEach(System.out::println);
        String[] numbers = lines.get(lines.size() - 1).split(" ");
        System.out.printf(
                Locale.ROOT,
                "%s units with %.1f entries a journal: %.1f s, %.2f core-ms each; with %.1f entries: %.2f core-ms each%n",
                numbers[0],
                Double.parseDouble(numbers[3]),
                Double.parseDouble(numbers[1]),
                Double.parseDouble(numbers[4]),
                Double.parseDouble(numbers[5]),
                Double.parseDouble(numbers[6]));
        return numbers;
    }

    /** What the engine made of visits, some of them broken, when it was stopped in the middle. */
    private record EngineRun(boolean equal, int refused, int restarts) {}

    private EngineRun engine() throws IOException, InterruptedException {
        Path work = Files.createTempDirectory("weirwise-fleet");
        try (ScratchRepository repository =
                ScratchRepository.with(ROOT, ROOT.resolve("lib/target/fleet/install.log"))) {
            Path visits = work.resolve("visits.tsv");
            Path answers = work.resolve("answers.tsv");
            List<String> expected = writeVisits(visits);
            Path project = work.resolve("flink");
            copy(ROOT.resolve("docs/examples/flink"), project);
            Path refused = work.resolve("refused.tsv");
            Path log = ROOT.resolve("lib/target/fleet/flink.log");
            new MavenRun(project, log)
                    .run(
                            repository.argument(),
                            "compile",
                            "exec:exec",
                            "-Dvisits=" + visits,
                            "-Danswers=" + answers,
                            "-Drefused=" + refused,
                            "-Dcheckpoints=" + work.resolve("checkpoints"),
                            "-DfailOnce=true");
            List<String> found = Files.readAllLines(answers).stream().sorted().toList();
            int broken = Files.readAllLines(refused).size();
            boolean equal = found.equals(expected.stream().sorted().toList()) && broken == brokenVisits;
            int restarts = Files.readString(log).contains("restarts: 1") ? 1 : 0;
            System.out.println("Apache Flink answered " + found.size() + " visits to " + engineUnits()
                    + " units, refused "
                    + broken + " of " + brokenVisits + " broken ones, was stopped and went on from a checkpoint "
                    + restarts + " times: " + (equal ? "all equal to the plain run" : "NOT equal to the plain run"));
            return new EngineRun(equal, broken, restarts);
        } finally {
            ScratchRepository.delete(work);
        }
    }

    /** Writes the visits of some units, all first ones first, and gives back the plain run's answers. */
    private List<String> writeVisits(Path file) throws IOException {
        InventedFleet fleet = InventedFleet.young(seed);
        List<String> lines = new ArrayList<>();
        List<String> answers = new ArrayList<>();
        List<List<Request>> all = new ArrayList<>();
        for (long number = 0; number < engineUnits(); number++) {
            all.add(fleet.visits(number));
        }
        int most = all.stream().mapToInt(List::size).max().orElse(0);
        for (int visit = 0; visit < most; visit++) {
            for (int number = 0; number < all.size(); number++) {
                if (visit < all.get(number).size()) {
                    if (number % EACH_BROKEN == visit % EACH_BROKEN) {
                        lines.add(broken(number, all.get(number).get(visit)));
                        brokenVisits++;
                    }
                    lines.add("tank-" + number + "\t"
                            + WeirwiseJson.writeRequest(all.get(number).get(visit)));
                    answers.add("tank-" + number + "\t" + answer(all.get(number).subList(0, visit + 1)));
                }
            }
        }
        Files.write(file, lines);
        return answers;
    }

    /** A visit that must be refused and change nothing: cut off, of another kind, without a tank, older than all that is known. */
    private static String broken(int number, Request visit) {
        String tank = "tank-" + number + "\t";
        String request = WeirwiseJson.writeRequest(visit);
        return switch (number / EACH_BROKEN % 4) {
            case 0 -> tank + request.substring(0, request.length() / 2);
            case 1 -> tank + "{\"version\":2,\"unit\":\"nowhere\"}";
            case 2 -> "no tank and no request";
            default -> tank + request.replace("\"now\":\"2026", "\"now\":\"1999");
        };
    }

    private static String answer(List<Request> visits) {
        List<JournalEntry> entries = new ArrayList<>();
        visits.forEach(each -> entries.addAll(each.journal().entries()));
        Request last = visits.get(visits.size() - 1);
        return last.now() + "\t"
                + WeirwiseJson.writeAdvice(
                        Weirwise.advise(last.unit(), last.settings(), new Journal(entries), last.now()));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (var files = Files.walk(from)) {
            for (Path file :
                    files.filter(each -> !each.toString().contains("target")).toList()) {
                Path copy = to.resolve(from.relativize(file));
                if (Files.isDirectory(file)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(file, copy);
                }
            }
        }
    }
}
