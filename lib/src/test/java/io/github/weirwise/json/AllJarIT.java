package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.internal.kept.LibraryVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
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
