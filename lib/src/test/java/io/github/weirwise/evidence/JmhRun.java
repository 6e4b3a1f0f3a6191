package io.github.weirwise.evidence;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Runs the benchmarks of the package {@code bench} in a process of their own and reads what they found. */
final class JmhRun {
    private static final String MAIN = "org.openjdk.jmh.Main";

    private final JsonNode results;

    private JmhRun(JsonNode results) {
        this.results = results;
    }

    /** Whether the harness is on the class path; the profile {@code bench} puts it there. */
    static boolean available() {
        return JmhRun.class.getClassLoader().getResource(MAIN.replace('.', '/') + ".class") != null;
    }

    /**
     * Runs all benchmarks whose names match.
     *
     * @param folder where its log and results go
     * @param more further arguments of the harness
     */
    static JmhRun of(String names, Path folder, String... more) throws IOException, InterruptedException {
        Path found = folder.resolve("jmh-" + names + ".json");
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), MAIN, names));
        command.addAll(List.of("-foe", "true", "-rf", "json", "-rff", found.toString()));
        command.addAll(List.of(more));
        Path log = folder.resolve("jmh-" + names + ".log");
        int code = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start()
                .waitFor();
        if (code != 0) {
            throw new IllegalStateException("the benchmarks " + names + " ended with " + code + ", see " + log);
        }
        return new JmhRun(new JsonMapper().readTree(Files.readString(found)));
    }

    /**
     * A percentile of the time of one call, ns; 0 is the quickest.
     *
     * @param percentile 0, 50, 90, 95, 99
     */
    double nanoseconds(int percentile) {
        return results.path(0)
                .path("primaryMetric")
                .path("scorePercentiles")
                .path(percentile + ".0")
                .asDouble();
    }
}
