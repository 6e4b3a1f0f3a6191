package io.github.weirwise.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.weirwise.report.OutOfRangeException;
import org.junit.jupiter.api.Test;

/** How often the adviser thinks again and how far ahead is kept within its range and changes nothing else. */
class SecondThoughtsTest {
    @Test
    void onlyTheNumberChanges() {
        AdviserOptions usual = AdviserOptions.DEFAULT;
        AdviserOptions none = usual.withSecondThoughts(0);
        assertThat(none.secondThoughts()).isZero();
        assertThat(none.withSecondThoughts(usual.secondThoughts())).isEqualTo(usual);
    }

    @Test
    void refusesFewerThanNoneAndMoreThanTwenty() {
        assertThatThrownBy(() -> AdviserOptions.DEFAULT.withSecondThoughts(-1))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("secondThoughts");
        assertThatThrownBy(() -> AdviserOptions.DEFAULT.withSecondThoughts(21)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void looksOneOrTwoAhead() {
        AdviserOptions one = AdviserOptions.DEFAULT.withLooksAhead(1);
        assertThat(one.looksAhead()).isEqualTo(1);
        assertThat(one.withLooksAhead(2)).isEqualTo(AdviserOptions.DEFAULT);
        assertThatThrownBy(() -> AdviserOptions.DEFAULT.withLooksAhead(3))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("looksAhead");
    }
}
