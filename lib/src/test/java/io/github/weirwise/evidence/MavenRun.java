package io.github.weirwise.evidence;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A build within a command: Maven in a folder, its output kept in a file and shown only when the build fails.
 *
 * @param javaOptions for Maven's own Java, added to those of this machine
 * @param jdk folder of the JDK that builds; empty for the usual one
 */
record MavenRun(Path folder, Path log, String javaOptions, String jdk) {
    MavenRun(Path folder, Path log) {
        this(folder, log, "", "");
    }

    /**
     * Runs Maven and waits for it.
     *
     * @throws IllegalStateException if the build fails; the end of its output is printed before
     */
    void run(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("mvn", "-B"));
        command.addAll(List.of(arguments));
        Files.createDirectories(log.getParent());
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(log.toFile());
        builder.environment().merge("MAVEN_OPTS", javaOptions, (old, own) -> old + " " + own);
        if (!jdk.isEmpty()) {
            builder.environment().put("JAVA_HOME", jdk);
        }
        int code = builder.start().waitFor();
        if (code != 0) {
            List<String> lines = Files.readAllLines(log);
            lines.subList(Math.max(0, lines.size() - 40), lines.size()).forEach(System.out::println);
            throw new IllegalStateException(String.join(" ", command) + " ended with " + code);
        }
    }
}
