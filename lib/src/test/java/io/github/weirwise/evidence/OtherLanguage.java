package io.github.weirwise.evidence;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;

/**
 * A program of the test tree in C or Python. Its last lines are names with two numbers: nanoseconds of the quickest pass and on
 * average; a line without a name is called by the program.
 */
record OtherLanguage(List<String> command) {
    private static final Path LIB = Files.isDirectory(Path.of("lib")) ? Path.of("lib") : Path.of("");
    private static final Path C = LIB.resolve(Path.of("src", "test", "c"));
    private static final Path PYTHON = LIB.resolve(Path.of("src", "test", "python"));

    /** What a program measured, ns. */
    record Time(double quickest, double average) {}

    /** A C program, compiled at -O3 for any machine of this kind and without reordering of sums; empty without gcc. */
    static Optional<OtherLanguage> c(String name, Path folder) throws IOException, InterruptedException {
        Path program = folder.resolve(name);
        List<String> compile = List.of(
                "gcc",
                "-O3",
                "-std=c11",
                "-o",
                program.toString(),
                C.resolve(name + ".c").toString(),
                "-lm");
        return runs(compile) ? Optional.of(new OtherLanguage(List.of(program.toString()))) : Optional.empty();
    }

    /** A Python program; empty without a python3 that has the module. */
    static Optional<OtherLanguage> python(String name, String module) throws IOException, InterruptedException {
        for (String python : List.of("python3", "/usr/bin/python3")) {
            if (runs(List.of(python, "-c", "import " + module))) {
                return Optional.of(new OtherLanguage(
                        List.of(python, PYTHON.resolve(name + ".py").toString())));
            }
        }
        return Optional.empty();
    }

    private static boolean runs(List<String> command) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(120, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException e) {
            return false;
        }
    }

    /** Runs the program; its measured times by name. */
    Map<String, Time> run(Object... arguments) throws IOException, InterruptedException {
        List<String> all = new ArrayList<>(command);
        for (Object argument : arguments) {
            all.add(argument.toString());
        }
        Process process = new ProcessBuilder(all)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IOException(String.join(" ", all) + " ended with " + process.exitValue());
        }
        Map<String, Time> times = new TreeMap<>();
        said.lines().map(line -> line.split(" ")).forEach(cells -> {
            int last = cells.length - 1;
            times.put(
                    last > 1 ? cells[0] : "",
                    new Time(Double.parseDouble(cells[last - 1]), Double.parseDouble(cells[last])));
        });
        return times;
    }
}
