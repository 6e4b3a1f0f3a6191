package io.github.weirwise.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first page keeps its word: two commands of one line, one short example that runs. */
class ReadmeTest {
    private static final int LONGEST_EXAMPLE_LINES = 12;

    private final Markdown readme = Markdown.of(Markdown.ROOT.resolve("README.md"));

    @TempDir
    private Path folder;

    @Test
    void theTwoCommandsStandAloneOnALineEach() {
        assertThat(String.join("", readme.blocks("")).lines()).startsWith("mvn -q compile exec:exec", "mvn -q verify");
    }

    @Test
    void theExampleIsShortAndSaysTheNextStepAndItsReasons() throws IOException, ReflectiveOperationException {
        List<String> blocks = readme.blocks("java");
        assertThat(blocks).hasSize(1);
        assertThat(blocks.get(0).lines().count()).isLessThanOrEqualTo(LONGEST_EXAMPLE_LINES);

        String printed = new JavaExample(blocks.get(0)).run(folder);

        assertThat(printed.lines().count()).isGreaterThanOrEqualTo(3);
        assertThat(printed).containsPattern("\\d").doesNotContain("{");
    }
}
