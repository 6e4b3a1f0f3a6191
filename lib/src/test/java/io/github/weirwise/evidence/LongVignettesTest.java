package io.github.weirwise.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.practice.Hands;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The adviser through ninety days each, against common practice: validation, not our own values. */
class LongVignettesTest {
    static Stream<LongVignette> cases() {
        return LongVignette.all().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void doesWhatASeasonedTechnicianWould(LongVignette vignette) {
        LongVignette.Verdict verdict = vignette.judged(Hands.ADVISER, 1);
        assertThat(verdict.broken())
                .as("%s: %s; %s", vignette.title(), vignette.wouldDo(), verdict)
                .isEqualTo(vignette.misses());
    }

    /** A judge that lets everybody pass would prove nothing. */
    @Test
    void whoOnlyEmptiesTheCupMissesWhatIsTheMatter() {
        LongVignette creep = cases().findFirst().orElseThrow();
        assertThat(creep.judged(Hands.NOTHING, 1).broken())
                .contains(LongVignette.Rule.LOOKS_THERE, LongVignette.Rule.COSTS_NO_MORE);
    }

    @Test
    void thereAreEnough() {
        List<LongVignette> cases = LongVignette.all();
        assertThat(cases).hasSizeGreaterThanOrEqualTo(10);
        assertThat(cases).extracting(LongVignette::name).doesNotHaveDuplicates();
        assertThat(cases.stream().filter(each -> !each.misses().isEmpty()).count())
                .as("misses are the exception")
                .isLessThanOrEqualTo(cases.size() / 5);
    }
}
