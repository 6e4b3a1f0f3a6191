package io.github.weirwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Found by {@code fuzz -Dseed=11}, document 266862: an answer that carried the smallest number there is could not be written. */
class TinyNumbersTest {
    @ParameterizedTest
    @EnumSource(Unit.class)
    void theSmallestAndTheLargestNumbersAreSaid(Unit unit) {
        for (double value :
                new double[] {Double.MIN_VALUE, -Double.MIN_VALUE, 1e-323, Double.MIN_NORMAL, 1e-300, 1e300}) {
            assertThat(PhraseBook.ENGLISH_METRIC.say(Quantity.of(value, unit))).isNotBlank();
            assertThat(PhraseBook.ENGLISH_METRIC.say(
                            QuantityRange.of(new Range(-Double.MIN_VALUE, Math.abs(value)), unit)))
                    .isNotBlank();
        }
    }
}
