package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.internal.kept.LibraryVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The one jar that runs by itself, as its user starts it. */
class AllJarIT {
    private static final Path JAR = Path.of(System.getProperty("all.jar"));

    @TempDir
    private Path folder;

    @Test
    void answersLineByLineAndOneBadLineHarmsNothing() throws Exception {
        String request = Fixtures.text("request.json").replace("\n", "");
        Path in = Files.write(folder.resolve("in"), List.of(request, "{", request));
        Path out = folder.resolve("out");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", JAR.toString())
                .redirectInput(in.toFile())
                .redirectOutput(out.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isZero();
        List<String> answers = Files.readAllLines(out);
        assertThat(answers).hasSize(3);
        assertThat(answers.get(0)).isEqualTo(WeirwiseJson.answer(request)).isEqualTo(answers.get(2));
        assertThat(Fixtures.tree(answers.get(1)).at("/error/path").stringValue())
                .isEqualTo("$");
    }

    /** A host in another language plays fourteen days from the documents alone, and meets every kind of step. */
    @Test
    void theFortnightOfTheDocumentsIsPlayed() throws Exception {
        Path said = folder.resolve("said");
        ProcessBuilder host = new ProcessBuilder(
                        "python3",
                        Path.of("..", "docs", "examples", "fortnight.py").toString(),
                        JAR.toString())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile());
        host.environment()
                .merge(
                        "PATH",
                        Path.of(System.getProperty("java.home"), "bin").toString(),
                        (old, java) -> java + ":" + old);
        Process process = start(host);
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        List<String> lines = Files.readAllLines(said);
        assertThat(process.exitValue()).as(String.join("\n", lines)).isZero();
        assertThat(lines.get(lines.size() - 1)).endsWith("steps=hold,look,makeSafe,moveWeir,servicePart");
    }

    private static Process start(ProcessBuilder host) {
        try {
            return host.start();
        } catch (IOException e) {
            return Assumptions.abort("no python3 on this machine");
        }
    }

    @Test
    void saysItsVersionAndCarriesTheLicences() throws IOException {
        try (JarFile jar = new JarFile(JAR.toFile())) {
            assertThat(jar.getManifest().getMainAttributes().getValue("Implementation-Version"))
                    .isEqualTo(LibraryVersion.current());
            for (String name : List.of("META-INF/LICENSE", "META-INF/NOTICE")) {
                assertThat(jar.getEntry(name)).as(name).isNotNull();
            }
            assertThat(jar.stream().map(each -> each.getName())).noneMatch(name -> name.endsWith("module-info.class"));
        }
    }
}
