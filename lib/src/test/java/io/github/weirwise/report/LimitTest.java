package io.github.weirwise.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class LimitTest {
    private static final Limit BORE =
            new Limit("neckBoreMm", 5, 600, Unit.MILLIMETRE, Phrase.of("report.words", "measure inside"));

    @Test
    void aNumberWithinIsGivenBack() {
        assertThat(BORE.check(5)).isEqualTo(5);
        assertThat(BORE.check(600)).isEqualTo(600);
        assertThat(BORE.contains(Double.NaN)).isFalse();
        assertThat(BORE.bounds()).isEqualTo(new Bounds(5, 600, Unit.MILLIMETRE));
    }

    @Test
    void aNumberOutsideNamesValueLimitUnitAndWhatToTry() {
        assertThatThrownBy(() -> BORE.check(1200.25, 5, 110))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("neckBoreMm is 1200.25 mm, must be 5 to 110 mm; measure inside");
        assertThatThrownBy(() -> BORE.check(Double.NaN)).hasMessageContaining("is NaN mm, must be 5 to 600 mm");
    }

    @Test
    void aReaderInOtherUnitsIsToldLimitsThatAreStillAllowed() {
        OutOfRangeException refused = catchThrowableOfType(OutOfRangeException.class, () -> BORE.check(0, 5, 110));
        PhraseBook us = new PhraseBook(Locale.US, UnitSystem.US_CUSTOMARY);
        assertThat(us.say(refused.problem())).isEqualTo("neckBoreMm is 0 in, must be 0.1969 to 4.33 in");
        assertThat(us.say(refused.tryThis())).isEqualTo("measure inside");
        assertThat(refused.unit()).contains(Unit.MILLIMETRE);
        assertThat(Unit.MILLIMETRE.fromShown(0.1969, UnitSystem.US_CUSTOMARY)).isGreaterThan(5);
        assertThat(Unit.MILLIMETRE.fromShown(4.33, UnitSystem.US_CUSTOMARY)).isLessThan(110);
    }

    @Test
    void aFormulasLimitKeepsItsOwnUnit() {
        assertThatThrownBy(() -> Require.inRange("viscosity", 5, 1e-4, 0.1, "Pa s", "water has about 0.001"))
                .hasMessage("viscosity is 5, must be 0.0001 to 0.1 Pa s; water has about 0.001");
    }

    @Test
    void limitsTheWrongWayRoundAreRefused() {
        assertThatThrownBy(() -> new Limit("x", 2, 1, Unit.PLAIN, Phrase.of("report.words", "y")))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
