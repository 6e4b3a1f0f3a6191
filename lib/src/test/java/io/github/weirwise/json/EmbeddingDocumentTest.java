package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.weirwise.report.PhraseBook;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs the examples of docs/embedding.md as they stand, each as a program of its own beside a folder of jars. */
class EmbeddingDocumentTest {
    private static final Path DOCUMENT = Path.of("..", "docs", "embedding.md");
    private static final String JAVA =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();

    @TempDir
    static Path folder;

    @BeforeAll
    static void layOutJars() throws IOException {
        Path libs = Files.createDirectory(folder.resolve("libs"));
        String places = System.getProperty("jdk.module.path", "")
                + File.pathSeparator
                + System.getProperty("java.class.path", "")
                + File.pathSeparator
                + System.getProperty("surefire.test.class.path", "");
        for (String place : places.split(File.pathSeparator)) {
            Path file = Path.of(place);
            String name = String.valueOf(file.getFileName());
            if (name.matches("(jackson-(core|databind|annotations)|hipparchus)-.*\\.jar") && Files.exists(file)) {
                Files.copy(file, libs.resolve(name), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            }
        }
        jar(Path.of("target", "classes"), libs.resolve("weirwise.jar"));
        Files.writeString(folder.resolve("request.json"), Fixtures.text("request.json"));
    }

    @Test
    void theJavaExamplesRunFromTheirSource() throws Exception {
        List<String> blocks = blocks("java");
        assertThat(blocks).hasSize(4);
        List<String> said = new ArrayList<>();
        for (String block : blocks) {
            Matcher name = Pattern.compile("class (\\w+)").matcher(block);
            assertThat(name.find()).isTrue();
            Path source = Files.writeString(folder.resolve(name.group(1) + ".java"), block);
            said.add(run(JAVA, "-cp", "libs/*", source.getFileName().toString()));
        }
        assertThat(said.get(0)).contains("not a safety device");
        assertThat(said.get(1)).contains("\"step\"").contains("$.settings.weirCrestCm is not known here");
        assertThat(said.get(2)).contains("1 entry, spoilt lines: []");
        assertThat(said.get(3)).containsPattern("(STEP|LOOK): ").contains("values=2304");
    }

    @Test
    void theShellExampleAnswersOnClassPathAndModulePath() throws Exception {
        assumeHas("sh", "-c", "exit 0");
        Path script = Files.writeString(folder.resolve("ask.sh"), blocks("sh").get(0));
        List<String> answers =
                run("sh", script.getFileName().toString()).lines().toList();
        assertThat(answers).hasSize(2);
        assertThat(answers.get(0)).isEqualTo(WeirwiseJson.answer(Fixtures.text("request.json")));
        assertThat(answers.get(1)).isEqualTo(answers.get(0));
    }

    @Test
    void thePythonExampleAsksTwice() throws Exception {
        assumeHas("python3", "--version");
        Path script =
                Files.writeString(folder.resolve("ask.py"), blocks("python").get(0));
        assertThat(run("python3", script.getFileName().toString()))
                .contains(stepInWords())
                .contains("'path': '$.settings.weirCrestCm'");
    }

    @Test
    void theNodeExampleAsksTwice() throws Exception {
        assumeHas("node", "--version");
        Path script = Files.writeString(folder.resolve("ask.js"), blocks("js").get(0));
        assertThat(run("node", script.getFileName().toString()))
                .contains(stepInWords())
                .contains("path: '$.settings.weirCrestCm'");
    }

    private static String stepInWords() {
        String answer = WeirwiseJson.answer(Fixtures.text("request.json"));
        return PhraseBook.ENGLISH_METRIC.say(WeirwiseJson.readAdvice(answer).what());
    }

    private static List<String> blocks(String language) throws IOException {
        Matcher block = Pattern.compile("```" + language + "\\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(DOCUMENT));
        return block.results().map(each -> each.group(1)).toList();
    }

    private static void assumeHas(String... command) throws Exception {
        boolean there;
        try {
            there = new ProcessBuilder(command)
                            .redirectErrorStream(true)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            there = false;
        }
        assumeTrue(
                there,
                "SKIPPED: no " + command[0] + " on this machine, so its example in docs/embedding.md was not run");
    }

    /** What a program prints; the test's own java comes first on its path. */
    private static String run(String... command) throws Exception {
        Path out = Files.createTempFile(folder, "out", ".txt");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(out.toFile());
        builder.environment()
                .merge("PATH", Path.of(JAVA).getParent().toString(), (old, own) -> own + File.pathSeparator + old);
        Process process = builder.start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).as("ended in time").isTrue();
        String said = Files.readString(out);
        assertThat(process.exitValue()).as(said).isZero();
        return said;
    }

    private static void jar(Path classes, Path jar) throws IOException {
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream entries = new JarOutputStream(out);
                Stream<Path> files = Files.walk(classes)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                entries.putNextEntry(
                        new JarEntry(classes.relativize(file).toString().replace(File.separatorChar, '/')));
                Files.copy(file, entries);
                entries.closeEntry();
            }
        }
    }
}
