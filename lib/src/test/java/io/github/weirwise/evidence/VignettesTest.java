package io.github.weirwise.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.advice.Step;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The adviser against written cases of common practice: validation, not our own values. */
class VignettesTest {
    static Stream<Vignette> cases() {
        return Vignettes.all().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void doesWhatASeasonedTechnicianWould(Vignette vignette) {
        Step step = vignette.advice().step();
        assertThat(vignette.meets(step))
                .as(
                        "%s: %s; common practice: %s (not: %s); marked as a known miss: %s",
                        vignette.title(), step, vignette.wouldDo(), vignette.wouldNotDo(), vignette.knownMiss())
                .isEqualTo(vignette.knownMiss().isEmpty());
    }

    @Test
    void thereAreEnoughAndEachSaysWhatIsExpected() {
        List<Vignette> cases = Vignettes.all();
        assertThat(cases).hasSizeGreaterThanOrEqualTo(12);
        assertThat(cases).extracting(Vignette::name).doesNotHaveDuplicates();
        assertThat(cases).allSatisfy(each -> {
            assertThat(each.source()).isEqualTo("common practice");
            assertThat(List.of(each.title(), each.seen(), each.wouldDo(), each.wouldNotDo()))
                    .noneMatch(String::isBlank);
            assertThat(each.allowed()).isNotEmpty();
            assertThat(each.forbidden()).isNotEmpty();
            assertThat(each.request().journal().entries()).isNotEmpty();
        });
        assertThat(cases.stream().filter(each -> each.knownMiss().isPresent()).count())
                .as("misses are the exception")
                .isLessThan(cases.size() / 5);
    }
}
