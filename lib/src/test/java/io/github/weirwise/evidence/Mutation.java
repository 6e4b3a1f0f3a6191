package io.github.weirwise.evidence;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How many small faults, put into the rooms one after the other by PIT, the tests of that room notice. The rooms are those
 * of the physics, the unit, the diagnosis and the advice; property {@code rooms} names fewer, separated by commas, {@code mutants}
 * takes at most so many faults of each class (0: all), {@code threads} how many run at a time.
 */
final class Mutation implements Evidence.Command {
    private static final Path ROOT = Path.of("").toAbsolutePath();
    private static final String BASE = "io.github.weirwise.";
    private static final String ALL = "seawater,hydraulics,bubbles,foam,colour,skimmer,diagnosis,advice";
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

    @Override
    public void run(String[] options) throws IOException, InterruptedException {
        Map<String, Count> counts = new TreeMap<>();
        for (String room : System.getProperty("rooms", ALL).split(",")) {
            Count count = count(room);
            counts.put(room, count);
            System.out.printf(
                    "%-12s %5d of %5d noticed, %.1f %%%n", room, count.noticed, count.mutants, count.scorePct());
        }
        Count all = counts.values().stream().reduce(new Count(0, 0), Count::plus);
        System.out.printf(
                "result: scorePct=%.1f mutants=%d noticed=%d rooms=%d%n",
                all.scorePct(), all.mutants, all.noticed, counts.size());
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
        new MavenRun(ROOT, ROOT.resolve("lib/target/mutation/" + room + ".log")).run(arguments.toArray(String[]::new));
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
