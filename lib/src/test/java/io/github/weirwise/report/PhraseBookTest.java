package io.github.weirwise.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class PhraseBookTest {
    private final PhraseBook english = PhraseBook.ENGLISH_METRIC;

    @Test
    void aRangeReadsAsOnePhraseWithItsUnit() {
        assertThat(english.say(QuantityRange.of(new Range(20, 24), Unit.MILLIMETRE)))
                .isEqualTo("20.0 to 24.0 mm");
    }

    @Test
    void anInchIs25Point4Millimetres() {
        PhraseBook us = new PhraseBook(Locale.US, UnitSystem.US_CUSTOMARY);
        assertThat(us.say(Quantity.of(25.4, Unit.MILLIMETRE))).isEqualTo("1.00 in");
        assertThat(us.say(Quantity.of(25, Unit.CELSIUS))).isEqualTo("77.0 \u00b0F");
    }

    @Test
    void shownAndHeldValuesAreInverseInBothSystems() {
        for (Unit unit : Unit.values()) {
            for (UnitSystem system : UnitSystem.values()) {
                double there = unit.toShown(17.25, system);
                assertThat(unit.fromShown(there, system))
                        .as("%s %s", unit, system)
                        .isEqualTo(17.25, within());
            }
        }
    }

    @Test
    void aSmallNegativeNumberIsNotPrintedAsMinusZero() {
        assertThat(english.number(-0.001, Unit.MILLIMETRE)).isEqualTo("0.0");
    }

    @Test
    void anUnknownKeyNamesItself() {
        assertThatThrownBy(() -> english.say(Phrase.of("report.nosuch")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("report.nosuch");
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.data.Offset.offset(1e-9);
    }
}
