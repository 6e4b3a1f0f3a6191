package io.github.weirwise.evidence;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.Supplier;

/**
 * Command {@code bench}: the benchmarks and the same equations in C, NumPy and SciPy, one after the other on one thread, and
 * their ratios; writes its part of docs/reference/performance.md. Ratios are of the quickest passes, which other work on the machine can only
 * lengthen; other languages run before and after. What is not installed is said in words and its ratio is -1.
 */
final class Bench {
    private static final double SECONDS = 3;
    private static final double SAME = 1e-9;
    private static final double SAME_COLUMN = 1e-4;

    private final Path folder = Path.of("lib", "target", "bench").toAbsolutePath();
    private final StringBuilder page = new StringBuilder();
    private final StringJoiner result = new StringJoiner(" ", "result: ", "");

    private Bench() {}

    static DocumentPart part() {
        return new DocumentPart(Path.of("docs", "reference", "performance.md"), "bench");
    }

    static void run(String[] options) throws IOException, InterruptedException {
        if (!JmhRun.available()) {
            System.out.println("The benchmarks are not compiled in; run with the profiles evidence and bench:"
                    + " mvn -q -Pevidence,bench test-compile exec:exec -Devidence=bench");
            System.out.println(
                    "result: steadyVsC=-1 steadyVsNumpy=-1 columnVsScipy=-1 tankYearVsScipy=-1 adviceP99Ms=-1"
                            + " tankYearMs=-1");
            return;
        }
        new Bench().all();
    }

    private void all() throws IOException, InterruptedException {
        Files.createDirectories(folder);
        say(BenchPage.head());
        steady();
        roots();
        column();
        tankYear();
        advice();
        part().write(page.toString());
        System.out.println(result);
    }

    private void say(String text) {
        page.append(text);
        System.out.print(text);
    }

    private void key(String name, double value) {
        result.add(name + "=" + (value < 0 ? "-1" : String.format(Locale.ROOT, "%.2f", value)));
    }

    private void steady() throws IOException, InterruptedException {
        say(BenchPage.steadyHead());
        steady("general", SteadyPoints.general(), true);
        steady("usual", SteadyPoints.usual(), false);
    }

    private void steady(String name, SteadyPoints points, boolean keyed) throws IOException, InterruptedException {
        Path inputs = folder.resolve("steady-" + name + ".in");
        points.write(inputs);
        Optional<OtherLanguage> c = OtherLanguage.c("steady", folder);
        Optional<OtherLanguage> numpy = OtherLanguage.python("steady_bench", "numpy");
        double inC = steadyIn(c, points, inputs);
        double inNumpy = steadyIn(numpy, points, inputs);
        JmhRun jmh = JmhRun.of("SteadyBench", folder, "-p", "exponents=" + name);
        double ours = jmh.nanoseconds(0) / SteadyPoints.POINTS;
        double usually = jmh.nanoseconds(50) / SteadyPoints.POINTS;
        inC = Math.min(inC, steadyIn(c, points, inputs));
        inNumpy = Math.min(inNumpy, steadyIn(numpy, points, inputs));
        System.out.println(name + ": " + points.described());
        say(BenchPage.steady(name, ours, usually, inC, inNumpy));
        if (keyed) {
            key("steadyVsC", ratio(inC, ours));
            key("steadyVsNumpy", ratio(inNumpy, ours));
        }
    }

    private double steadyIn(Optional<OtherLanguage> language, SteadyPoints points, Path inputs)
            throws IOException, InterruptedException {
        if (language.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        Path answers = folder.resolve("steady.out");
        double taken = language.get().run(inputs, answers, SECONDS).get("").quickest();
        require(points.worstDifference(answers), SAME, "steady points");
        return taken;
    }

    private void roots() {
        List<SolverRace.Lap> laps = SolverRace.run();
        say(SolverRace.table(laps));
        key(
                "rootsVsHipparchus",
                laps.stream().mapToDouble(SolverRace.Lap::ratio).min().orElseThrow());
    }

    private void column() throws IOException, InterruptedException {
        ColumnCases cases = new ColumnCases();
        Path inputs = folder.resolve("column.in");
        cases.write(inputs);
        Path answers = folder.resolve("column.out");
        Optional<OtherLanguage> scipy = OtherLanguage.python("column_bench", "scipy");
        Map<String, OtherLanguage.Time> theirs =
                scipy.isEmpty() ? Map.of() : scipy.get().run(inputs, answers, ColumnCases.TOLERANCE, SECONDS);
        if (scipy.isPresent()) {
            require(cases.worstDifference(answers), SAME_COLUMN, "columns");
        }
        JmhRun jmh = JmhRun.of("ColumnBench", folder);
        double ours = jmh.nanoseconds(0) / ColumnCases.COLUMNS;
        say(BenchPage.column(ours, jmh.nanoseconds(50) / ColumnCases.COLUMNS, theirs));
        key("columnVsScipy", ratio(quickest(theirs), ours));
    }

    private void tankYear() throws IOException, InterruptedException {
        ScipyTank scipy = new ScipyTank(folder);
        Optional<Double> theirs = scipy.run();
        JmhRun jmh = JmhRun.of("TankYearBench", folder);
        say(BenchPage.tankYear(jmh, theirs, scipy.compared()));
        key("tankYearVsScipy", ratio(theirs.orElse(Double.POSITIVE_INFINITY), jmh.nanoseconds(0)));
        key("tankYearMs", jmh.nanoseconds(50) / 1e6);
    }

    private void advice() throws IOException, InterruptedException {
        JmhRun short30 = JmhRun.of("AdviceBench", folder, "-p", "entries=30");
        JmhRun long300 = JmhRun.of("AdviceBench", folder, "-p", "entries=300");
        say(BenchPage.advice(short30, long300));
        key("adviceP99Ms", short30.nanoseconds(99) / 1e6);
        key("advice300P99Ms", long300.nanoseconds(99) / 1e6);
    }

    private static double quickest(Map<String, OtherLanguage.Time> times) {
        return times.values().stream()
                .map(OtherLanguage.Time::quickest)
                .min(Comparator.naturalOrder())
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** How many times as quick as another language; -1 where it is not installed. */
    static double ratio(double theirs, double ours) {
        return Double.isInfinite(theirs) ? -1 : theirs / ours;
    }

    private static void require(double difference, double most, String what) {
        if (!(difference <= most)) {
            throw new IllegalStateException("the other language solves other " + what + ": apart by " + difference
                    + " of their size, " + most + " allowed");
        }
    }

    /** Median time of a few calls after warming up, ms. */
    static double medianMs(Supplier<?> call, int warmUp, int calls) {
        for (int i = 0; i < warmUp; i++) {
            call.get();
        }
        double[] taken = new double[calls];
        for (int i = 0; i < calls; i++) {
            long from = System.nanoTime();
            call.get();
            taken[i] = (System.nanoTime() - from) / 1e6;
        }
        Arrays.sort(taken);
        return taken[calls / 2];
    }
}
