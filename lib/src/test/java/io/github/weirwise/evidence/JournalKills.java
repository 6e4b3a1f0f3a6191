package io.github.weirwise.evidence;

import io.github.weirwise.json.JournalContents;
import io.github.weirwise.json.JournalFile;
import io.github.weirwise.json.SpoiltLine;
import io.github.weirwise.reading.Note;
import io.github.weirwise.unit.FirstRoundUnits;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Two programs at a time write to one journal; both are killed without warning (signal 9 on POSIX systems) at a random
 * moment, again and again, until enough writes were acknowledged. Lost is every acknowledged note that is not there exactly
 * once, and every line that cannot be read.
 */
public final class JournalKills {
    private final Path journal;
    private final Random random;
    private final List<String> acknowledged = new ArrayList<>();
    private int kills;
    private int torn;

    private JournalKills(Path journal, long seed) {
        this.journal = journal;
        this.random = new Random(seed);
    }

    /** What was seen. */
    public record Outcome(int writes, int kills, int torn, int lost) {}

    /**
     * Prints the outcome.
     *
     * @param options none
     */
    public static void run(String[] options) throws Exception {
        Outcome outcome = count(Integer.getInteger("writes", 1000), Long.getLong("seed", 1));
        System.out.println("acknowledged writes " + outcome.writes() + ", writers killed " + outcome.kills()
                + ", torn last lines found after a kill " + outcome.torn());
        JournalFlips flips = JournalFlips.count(Integer.getInteger("flips", 20_000), Long.getLong("seed", 1));
        System.out.println("flipped bits " + flips.flips() + ", changed without a word " + flips.silent()
                + ", file no longer opened " + flips.unopenable());
        System.out.println("result: writes=" + outcome.writes() + " kills=" + outcome.kills() + " torn="
                + outcome.torn() + " lost=" + outcome.lost() + " flips=" + flips.flips() + " silent=" + flips.silent()
                + " unopenable=" + flips.unopenable());
    }

    /** Kills writers until at least this many writes were acknowledged. */
    public static Outcome count(int writes, long seed) throws Exception {
        Path folder = Files.createTempDirectory("weirwise-journal");
        try {
            JournalKills trial = new JournalKills(folder.resolve("tank.jsonl"), seed);
            return trial.until(writes);
        } finally {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.toList()) {
                    Files.delete(file);
                }
            }
            Files.delete(folder);
        }
    }

    private Outcome until(int writes) throws Exception {
        JournalFile file = JournalFile.create(
                journal, FirstRoundUnits.middle(), FirstRoundUnits.middle().ratedSettings(205));
        while (acknowledged.size() < writes) {
            round();
            torn += (int) file.read().spoilt().stream().filter(SpoiltLine::torn).count();
        }
        file.append(new Note(Instant.parse("2026-03-02T00:00:00Z"), "the last one"));
        acknowledged.add("the last one");
        return new Outcome(acknowledged.size(), kills, torn, lost(file.read()));
    }

    private void round() throws Exception {
        Process first = start("a" + kills);
        Process second = start("b" + kills);
        try (BufferedReader firstSays = first.inputReader(StandardCharsets.UTF_8);
                BufferedReader secondSays = second.inputReader(StandardCharsets.UTF_8)) {
            // Both are up once they have said something; then the moment of the kill is chance.
            acknowledged.add(firstLine(firstSays));
            acknowledged.add(firstLine(secondSays));
            Thread.sleep(random.nextInt(120));
            first.toHandle().destroyForcibly(); // not the process itself, which would close its output
            Thread.sleep(random.nextInt(30));
            second.toHandle().destroyForcibly();
            first.waitFor();
            second.waitFor();
            kills += 2;
            firstSays.lines().forEach(acknowledged::add);
            secondSays.lines().forEach(acknowledged::add);
        }
    }

    private static String firstLine(BufferedReader says) throws IOException {
        String line = says.readLine();
        if (line == null) {
            throw new IOException("a writer ended before it had written anything");
        }
        return line;
    }

    private Process start(String name) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new ProcessBuilder(
                        java,
                        "-XX:TieredStopAtLevel=1",
                        "-Xshare:auto",
                        "-cp",
                        classPath(),
                        JournalWriter.class.getName(),
                        journal.toString(),
                        name)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    /** On the module path too, where the two are apart. */
    static String classPath() {
        String modules = System.getProperty("jdk.module.path", "");
        String classes = System.getProperty("java.class.path", "");
        String tests = System.getProperty("surefire.test.class.path", "");
        return Stream.of(tests, modules, classes)
                .filter(each -> !each.isEmpty())
                .reduce((a, b) -> a + File.pathSeparator + b)
                .orElse("");
    }

    private int lost(JournalContents contents) {
        List<String> found =
                contents.journal().all(Note.class).stream().map(Note::text).toList();
        Set<String> once = new HashSet<>(found);
        int missing =
                (int) acknowledged.stream().filter(each -> !once.contains(each)).count();
        int twice = found.size() - once.size();
        return missing + twice + contents.spoilt().size();
    }
}
