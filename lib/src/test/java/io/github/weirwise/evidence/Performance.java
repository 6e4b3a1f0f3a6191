package io.github.weirwise.evidence;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Command {@code performance}: all of docs/reference/performance.md, one command after the other ({@code bench}, {@code start-up}), then
 * whole programs, each in a process of its own: {@code fleet} and the demo's {@code demo-timing}.
 */
final class Performance {
    private static final Path COMMANDS = Path.of("docs", "commands.md");

    private final StringBuilder text = new StringBuilder();
    private final TreeMap<String, String> found = new TreeMap<>();

    private Performance() {}

    static DocumentPart part() {
        return new DocumentPart(Path.of("docs", "reference", "performance.md"), "performance");
    }

    static void run(String[] options) throws Exception {
        if (JmhRun.available()) {
            Bench.run(options);
        } else {
            System.out.println("The benchmarks are not compiled in (profile bench), so their part stays as it is.");
        }
        StartUp.run(options);
        new Performance().wholePrograms();
    }

    private void wholePrograms() throws IOException, InterruptedException {
        text.append("Machine: ").append(BenchPage.machine()).append(", other work on it counted in.\n\n");
        text.append("| program | what it took |\n|---|---|\n");
        fleet();
        demo();
        System.out.print(text);
        part().write(text.toString());
        StringBuilder line = new StringBuilder("result:");
        found.forEach((key, value) -> line.append(' ').append(key).append('=').append(value));
        System.out.println(line);
    }

    private void fleet() throws IOException, InterruptedException {
        Map<String, String> said = evidence("fleet");
        row(
                "`fleet`: %s units with %s entries a journal, two threads, heap of 256 MB",
                "%s s, that is %s core-ms a unit; %s MB at most; with %s entries a journal %s core-ms a unit",
                said,
                "units",
                "entries",
                "seconds",
                "coreMs",
                "peakHeapMb",
                "settledEntries",
                "settledCoreMs");
        found.put("fleetSeconds", said.get("seconds"));
        found.put("fleetUnits", said.get("units"));
    }

    private void demo() throws IOException, InterruptedException {
        Optional<Map<String, String>> timing = resultOf(List.of("bash", "-c", commandLine("demo-timing")));
        if (timing.isEmpty()) {
            text.append("| `demo-timing` | not measured here: it needs xvfb-run |\n");
            return;
        }
        row(
                "`demo-timing`: the demo in a window of 1200 x 800",
                "first paint after %s ms; %s frames/s; longest event %s ms by the wall, %s ms of the processor",
                timing.get(),
                "firstPaintMs",
                "framesPerSecond",
                "longestEventMs",
                "longestEventCpuMs");
        found.put("firstPaintMs", timing.get().get("firstPaintMs"));
        found.put("longestEventMs", timing.get().get("longestEventMs"));
    }

    /** A row whose places are filled in order, the first cell's first. */
    private void row(String what, String took, Map<String, String> said, String... keys) {
        Object[] values = new Object[keys.length];
        for (int i = 0; i < keys.length; i++) {
            values[i] = said.get(keys[i]);
        }
        text.append(String.format(Locale.ROOT, "| " + what + " | " + took + " |%n", values));
    }

    private static Map<String, String> evidence(String name) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        for (String property : List.of("tanks", "units", "seed")) {
            String value = System.getProperty(property);
            if (value != null) {
                command.add("-D" + property + "=" + value);
            }
        }
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Evidence.class.getName(), name));
        return resultOf(command).orElseThrow(() -> new IllegalStateException("the command " + name + " failed"));
    }

    /** The last line's keys; empty when the program failed. What it prints besides goes to the error stream. */
    private static Optional<Map<String, String>> resultOf(List<String> command)
            throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String last = "";
        for (String line :
                new String(process.getInputStream().readAllBytes()).lines().toList()) {
            System.err.println(line);
            last = line.startsWith("result:") ? line : last;
        }
        return process.waitFor() == 0 && !last.isEmpty() ? Optional.of(keys(last)) : Optional.empty();
    }

    /** Keys and values of a last line. */
    static Map<String, String> keys(String result) {
        Map<String, String> keys = new TreeMap<>();
        for (String each : result.replaceFirst("^result:\\s*", "").trim().split("\\s+")) {
            String[] sides = each.split("=", 2);
            keys.put(sides[0], sides[1]);
        }
        return keys;
    }

    /** The line that docs/commands.md gives for a name; from the project's root. */
    static String commandLine(String name) throws IOException {
        return Files.readAllLines(COMMANDS).stream()
                .map(line -> line.split("\\|"))
                .filter(cells ->
                        cells.length > 3 && cells[1].trim().replace("`", "").equals(name))
                .map(cells -> cells[2].trim().replace("`", ""))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(COMMANDS + " has no command " + name));
    }
}
