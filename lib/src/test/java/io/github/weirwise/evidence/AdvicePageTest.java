package io.github.weirwise.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.Weirwise;
import io.github.weirwise.advice.Advice;
import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.diagnosis.CauseScene;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.Part;
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

    /** Without a look nobody can tell a narrowed air line from other faults that take air, and the advice says so. */
    @Test
    void whatCannotBeToldApartIsSaidSo() {
        CauseScene line = new CauseScene(Cause.AIR_LINE_RESTRICTED);
        Advice advice = Weirwise.advise(line.unit(), line.start(), line.routine(), line.now());
        assertThat(advice.why().line().key()).isEqualTo("advice.why.between");
        Reading look = Reading.of(line.now(), line.lookAt(Part.INJECTOR_PUMP), line.lookAt(Part.AIR_LINE), line.air());
        Advice after = Weirwise.advise(line.unit(), line.start(), line.routine().with(look), line.now());
        assertThat(after.diagnosis().likeliest().cause()).isEqualTo(Cause.AIR_LINE_RESTRICTED);
        assertThat(after.why().line().key()).isEqualTo("advice.why.headline");
    }

    @Test
    void thereAreFiveWorkedJournalsWithDifferentSortsOfStep() {
        assertThat(Vignettes.worked()).hasSize(5);
        assertThat(Vignettes.worked().stream()
                        .map(each -> each.advice().step().getClass())
                        .distinct())
                .as("move, service, look, hold, make safe")
                .hasSize(5);
    }
}
