package io.github.weirwise.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.json.WeirwiseJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the example for Apache Flink is given; the command {@code fleet} runs it. */
class FlinkExampleTest {
    private static final Path PROJECT = Path.of("..", "docs", "examples", "flink");

    @Test
    void theVisitsOfTheExampleAreRequestsOfOneVisitEach() throws IOException {
        List<String> lines = Files.readAllLines(PROJECT.resolve("visits.tsv"));
        assertThat(lines).hasSizeGreaterThan(5).allSatisfy(line -> {
            String[] parts = line.split("\t");
            assertThat(parts[0]).startsWith("tank-");
            assertThat(WeirwiseJson.readRequest(parts[1]).journal().entries()).hasSize(1);
        });
    }

    @Test
    void theExampleDependsOnThisVersionOfTheLibrary() throws IOException {
        String example = Files.readString(PROJECT.resolve("pom.xml"));
        String library = Files.readString(Path.of("pom.xml"));
        String version = library.replaceAll("(?s).*?<version>([^<]+)</version>.*", "$1");
        assertThat(example).contains("<artifactId>weirwise</artifactId>\n      <version>" + version + "</version>");
    }
}
