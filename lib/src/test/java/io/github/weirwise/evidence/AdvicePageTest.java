package io.github.weirwise.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The page on advice shows what the code says now. */
class AdvicePageTest {
    private static final Path PAGE = Path.of(System.getProperty("basedir", ""))
            .toAbsolutePath()
            .getParent()
            .resolve("docs/reference/advice.md");

    @Test
    void thePageIsWhatTheCommandWrites() throws IOException {
        assertThat(new DocumentPart(PAGE, "advice").read())
                .as("run the command advice again")
                .isEqualTo(AdvicePage.text());
    }

    @Test
    void thereAreFiveWorkedJournalsWithFourSortsOfStep() {
        assertThat(Vignettes.worked()).hasSize(5);
        assertThat(Vignettes.worked().stream()
                        .map(each -> each.advice().step().getClass())
                        .distinct())
                .as("of move, service, look, hold, make safe")
                .hasSizeGreaterThanOrEqualTo(4);
    }
}
