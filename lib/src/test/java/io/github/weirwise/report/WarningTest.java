package io.github.weirwise.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class WarningTest {
    private static final Warning NOTE = Warning.note("a.one");
    private static final Warning OTHER_NOTE = Warning.note("a.one", Quantity.of(2, Unit.MILLIMETRE));
    private static final Warning CAUTION = Warning.caution("a.two");
    private static final Warning DANGER = Warning.danger("a.three");

    @Test
    void theGravestComesFirstAndEqualsKeepTheirOrder() {
        assertThat(Warning.ranked(List.of(OTHER_NOTE, CAUTION, NOTE, DANGER)))
                .containsExactly(DANGER, CAUTION, OTHER_NOTE, NOTE);
        assertThat(Warning.ranked(List.of())).isEmpty();
    }

    @Test
    void whatIsSaidTwiceIsToldOnceAndOtherNumbersAreOtherWarnings() {
        assertThat(Warning.ranked(List.of(NOTE, CAUTION, Warning.note("a.one"), OTHER_NOTE)))
                .containsExactly(CAUTION, NOTE, OTHER_NOTE);
        assertThat(Warning.ranked(List.of(NOTE, Warning.caution("a.one")))).hasSize(2);
    }

    @Test
    void theListIsTheCallersNoMore() {
        List<Warning> ranked = Warning.ranked(List.of(NOTE));
        assertThatThrownBy(() -> ranked.add(CAUTION)).isInstanceOf(UnsupportedOperationException.class);
    }
}
