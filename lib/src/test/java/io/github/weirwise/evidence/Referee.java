package io.github.weirwise.evidence;

import io.github.weirwise.internal.physics.seawater.Seawater;
import io.github.weirwise.internal.physics.seawater.SpecificGravity;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;

/**
 * Command {@code referee}: sea water against the TEOS-10 library GSW (Debian package python3-gsw) over a grid, then the
 * library's own root finders and integrals against Hipparchus' general ones.
 */
final class Referee {
    private static final Path SCRIPT = Path.of("lib", "src", "test", "python", "seawater_referee.py");

    /** How far apart two answers to the same question are at worst. */
    static final class Worst {
        private int points;
        private double percent;

        void add(double ours, double theirs) {
            points++;
            double error = 100 * Math.abs(ours - theirs) / Math.max(Math.abs(theirs), 1e-300);
            percent = Math.max(percent, Double.isNaN(error) ? Double.POSITIVE_INFINITY : error);
        }

        int points() {
            return points;
        }

        double percent() {
            return percent;
        }
    }

    private Referee() {}

    static void run() throws IOException, InterruptedException {
        Map<String, Worst> numerics = NumericsReferee.compare(400, Long.getLong("seed", 1));
        print("against Hipparchus", numerics);
        Optional<String> python = python();
        if (python.isEmpty()) {
            System.out.println("skipped: no python3 with the package gsw (Debian python3-gsw) is installed here");
            System.out.printf(
                    Locale.ROOT,
                    "result: points=0 worstErrorPct=0 skipped=1 numericsPoints=%d numericsWorstErrorPct=%.3g%n",
                    points(numerics),
                    worst(numerics));
            return;
        }
        Map<String, Worst> water = compare(python.get());
        print("against GSW", water);
        System.out.printf(
                Locale.ROOT,
                "result: points=%d worstErrorPct=%.4g skipped=0 numericsPoints=%d numericsWorstErrorPct=%.3g%n",
                points(water),
                worst(water),
                points(numerics),
                worst(numerics));
    }

    private static Map<String, Worst> compare(String python) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(python, SCRIPT.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        Map<String, Worst> worst = new TreeMap<>();
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            lines.lines().forEach(line -> addPoint(line.split(" "), worst));
        }
        if (process.waitFor() != 0) {
            throw new IOException(SCRIPT + " ended with " + process.exitValue());
        }
        return worst;
    }

    private static void addPoint(String[] cells, Map<String, Worst> worst) {
        double salinity = Double.parseDouble(cells[1]);
        double celsius = Double.parseDouble(cells[2]);
        double theirs = Double.parseDouble(cells[3]);
        Worst quantity = worst.computeIfAbsent(cells[0], name -> new Worst());
        switch (cells[0]) {
            case "density" -> quantity.add(Seawater.density(salinity, celsius), theirs);
            case "oxygen" -> quantity.add(Seawater.oxygenSolubility(salinity, celsius), theirs);
            case "gravity" -> quantity.add(SpecificGravity.AT_25_25.salinity(theirs), salinity);
            default -> throw new IllegalStateException("the script printed " + cells[0]);
        }
    }

    /** The first python3 that can load gsw: the one on the path, then Debian's own. */
    private static Optional<String> python() throws InterruptedException {
        for (String candidate : List.of("python3", "/usr/bin/python3")) {
            try {
                Process process = new ProcessBuilder(candidate, "-c", "import gsw")
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
                if (process.waitFor(60, TimeUnit.SECONDS) && process.exitValue() == 0) {
                    return Optional.of(candidate);
                }
            } catch (IOException e) {
                System.out.println("no " + candidate + " here");
            }
        }
        return Optional.empty();
    }

    private static void print(String title, Map<String, Worst> worst) {
        System.out.println(title);
        worst.forEach((name, found) -> System.out.printf(
                Locale.ROOT, "  %-28s %6d points, worst %.3g %%%n", name, found.points(), found.percent()));
    }

    private static int points(Map<String, Worst> worst) {
        return worst.values().stream().mapToInt(Worst::points).sum();
    }

    private static double worst(Map<String, Worst> worst) {
        return worst.values().stream().mapToDouble(Worst::percent).max().orElse(0);
    }
}
