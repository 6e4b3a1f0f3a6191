package io.github.weirwise.evidence;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * How many small faults, put into the rooms one after the other by PIT, the tests of that room notice. The rooms are those
 * of the physics, the unit, the diagnosis and the advice; property {@code rooms} names fewer, separated by commas, {@code mutants}
 * takes at most so many faults of each class (0: all), {@code threads} how many run at a time, {@code fresh=false} counts the
 * reports of an earlier run again. Writes its part of docs/reference/quality.md.
 */
final class Mutation implements Evidence.Command {
    private static final Path ROOT = Path.of("").toAbsolutePath();
    private static final String BASE = "io.github.weirwise.";
    private static final String ALL = "seawater,hydraulics,bubbles,foam,colour,skimmer,diagnosis,advice";
    private static final String HEAD = """
            | room | small faults | noticed | % | taken |
            |---|---|---|---|---|
            """;
    private static final Pattern MUTANT = Pattern.compile("<mutation detected='(true|false)' status='([A-Z_]+)'.*?"
            + "<mutatedClass>([^<]*)</mutatedClass>.*?<lineNumber>(\\d+)</lineNumber>.*?<description>([^<]*)<");

    /** Mutants of a room, and how many of them were noticed. */
    private record Count(int mutants, int noticed) {
        Count plus(Count other) {
            return new Count(mutants + other.mutants, noticed + other.noticed);
        }

        double scorePct() {
            return mutants == 0 ? 0 : 100.0 * noticed / mutants;
        }
    }

    static DocumentPart part() {
        return new DocumentPart(Path.of("docs", "reference", "quality.md"), "mutation");
    }

    @Override
    public void run(String[] options) throws IOException, InterruptedException {
        Map<String, String> rows = rows();
        Count all = new Count(0, 0);
        int rooms = 0;
        for (String room : System.getProperty("rooms", ALL).split(",")) {
            Count count = count(room);
            all = all.plus(count);
            rooms++;
            rows.put(room, row(room, count));
            System.out.printf(
                    "%-12s %5d of %5d noticed, %.1f %%%n", room, count.noticed, count.mutants, count.scorePct());
        }
        part().write(HEAD + rows.values().stream().map(row -> row + "\n").collect(Collectors.joining()));
        System.out.printf(
                "result: scorePct=%.1f mutants=%d noticed=%d rooms=%d%n",
                all.scorePct(), all.mutants, all.noticed, rooms);
    }

    /** The rows of the page, by room; a run over some rooms leaves those of the others. */
    private static Map<String, String> rows() throws IOException {
        Map<String, String> rows = new LinkedHashMap<>();
        List<String> old = part().read().lines().toList();
        for (String room : ALL.split(",")) {
            old.stream()
                    .filter(line -> line.startsWith("| `" + room + "` |"))
                    .findFirst()
                    .ifPresent(line -> rows.put(room, line));
        }
        return rows;
    }

    private static String row(String room, Count count) {
        int most = Integer.getInteger("mutants", 0);
        return String.format(
                Locale.ROOT,
                "| `%s` | %d | %d | %.1f | %s |",
                room,
                count.mutants,
                count.noticed,
                count.scorePct(),
                most == 0 ? "all" : "at most " + most + " a class");
    }

    private static Count count(String room) throws IOException, InterruptedException {
        Path report = ROOT.resolve("lib/target/mutation").resolve(room);
        List<String> arguments = new ArrayList<>(List.of(
                "-Pmutation",
                "-pl",
                "lib",
                "test-compile",
                "org.pitest:pitest-maven:mutationCoverage",
                "-Dmutation.threads=" + Integer.getInteger("threads", 2),
                "-DreportsDirectory=" + report,
                "-DtargetClasses=" + BASE + room + ".*",
                "-DtargetTests=" + String.join(",", tests(room))));
        int mutantsEach = Integer.getInteger("mutants", 0);
        if (mutantsEach > 0) {
            arguments.add("-Dfeatures=+CLASSLIMIT(limit[" + mutantsEach + "])");
        }
        if (Boolean.parseBoolean(System.getProperty("fresh", "true"))) {
            new MavenRun(ROOT, ROOT.resolve("lib/target/mutation/" + room + ".log"))
                    .run(arguments.toArray(String[]::new));
        }
        return count(report);
    }

    /**
     * The tests that may notice: those of the room; for physics the published values, for the diagnosis also those of the advice,
     * which rests on nothing else, and for both what common practice would do in known cases. Not the pages of documents that
     * tests hold against what commands print: they notice any change and say nothing of right and wrong.
     */
    private static List<String> tests(String room) {
        return switch (room) {
            case "diagnosis" -> List.of(BASE + "diagnosis.*", BASE + "advice.*", BASE + "evidence.VignettesTest");
            case "advice" -> List.of(BASE + "advice.*", BASE + "evidence.VignettesTest");
            default ->
                List.of(BASE + room + ".*", BASE + "evidence.ValidationTest", BASE + "architecture.PhysicsLimitsTest");
        };
    }

    private static Count count(Path report) throws IOException {
        Matcher mutant = MUTANT.matcher(Files.readString(report.resolve("mutations.xml")));
        int mutants = 0;
        int noticed = 0;
        while (mutant.find()) {
            mutants++;
            noticed += mutant.group(1).equals("true") ? 1 : 0;
            if (mutant.group(1).equals("false")) {
                System.out.println("  " + mutant.group(2).toLowerCase(Locale.ROOT) + " "
                        + mutant.group(3).substring(BASE.length()) + ":" + mutant.group(4) + " " + mutant.group(5));
            }
        }
        return new Count(mutants, noticed);
    }
}
