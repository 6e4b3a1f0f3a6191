package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.unit.Part;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The table of causes hangs together: directions, remedies, words. */
class CauseTableTest {
    private static final Set<Cause> WITHOUT_EFFECT =
            EnumSet.of(Cause.WEIR_TOO_LOW, Cause.WEIR_TOO_HIGH, Cause.NOTHING_WRONG, Cause.READING_ERROR);

    private static final Set<Cause> TAKES_AIR = EnumSet.of(
            Cause.AIR_LINE_RESTRICTED, Cause.AIR_LINE_UNDER_WATER, Cause.INJECTOR_PUMP_WORN, Cause.NOZZLE_SCALED);
    /** Air that is drawn in, and shown by a meter in the air line, but never reaches the foam. */
    private static final Set<Cause> LOSES_GAS = EnumSet.of(Cause.PART_SEATED_WRONG, Cause.BUBBLES_CARRIED_UNDER);

    @ParameterizedTest
    @EnumSource
    void everyCauseHasWordsAndAnEffectWithinTheRangesAtAnySize(Cause cause) {
        assertThat(PhraseBook.ENGLISH_METRIC.say(Phrase.of(cause.nameKey()))).isNotBlank();
        for (double size = 0.05; size <= 1; size += 0.05) {
            Influence influence = cause.effect().at(size);
            assertThat(influence.equals(Influence.NONE)).isEqualTo(WITHOUT_EFFECT.contains(cause));
        }
    }

    @ParameterizedTest
    @EnumSource
    void aLargerFaultTakesMoreOfWhatItTakes(Cause cause) {
        Influence small = cause.effect().at(0.2);
        Influence large = cause.effect().at(0.8);
        assertThat(small.airFactor() < 1).isEqualTo(TAKES_AIR.contains(cause));
        if (TAKES_AIR.contains(cause)) {
            assertThat(large.airFactor()).isLessThan(small.airFactor());
        }
        assertThat(small.gasFactor() < 1).isEqualTo(LOSES_GAS.contains(cause));
        assertThat(large.gasFactor()).isLessThanOrEqualTo(small.gasFactor());
        assertThat(small.flowFactor() < 1).isEqualTo(cause == Cause.RETURN_FLOW_DOWN);
        assertThat(large.flowFactor()).isLessThanOrEqualTo(small.flowFactor());
        assertThat(Math.abs(large.salinityShift())).isGreaterThanOrEqualTo(Math.abs(small.salinityShift()));
        assertThat(small.drownedByMm() > 0).isEqualTo(cause == Cause.PAD_CLOGGED);
        assertThat(small.backPressureMm() > 0).isEqualTo(cause == Cause.CUP_VENT_BLOCKED);
    }

    @ParameterizedTest
    @EnumSource
    void whatIsServicedNamesAPartAndWhatPassesATime(Cause cause) {
        assertThat(cause.serviceable()).isEqualTo(cause.servicePart().isPresent());
        assertThat(cause.serviceable() && cause.passes()).isFalse();
        assertThat(cause.remedy().hours()).isPositive();
        assertThat(cause.priorWeight()).isNotNegative();
        if (cause.growth() == Cause.Growth.DAYS) {
            assertThat(cause.serviceable()).as("only parts wear over days").isTrue();
        }
    }

    @Test
    void noTwoCausesAreSettledByTheSamePart() {
        assertThat(Arrays.stream(Cause.values())
                        .filter(cause -> cause != Cause.AIR_LINE_UNDER_WATER)
                        .flatMap(cause -> cause.servicePart().stream()))
                .doesNotHaveDuplicates()
                .contains(Part.AIR_LINE, Part.NECK_AND_CUP, Part.WEIR_PLATE);
    }

    @Test
    void theCausesThatAreToldApartAfterTheFactHaveNoPrior() {
        assertThat(Arrays.stream(Cause.values()).filter(cause -> cause.priorWeight() == 0))
                .containsExactly(Cause.WEIR_TOO_LOW, Cause.WEIR_TOO_HIGH);
        assertThat(Arrays.stream(Cause.values())
                        .filter(cause -> cause.priorWeight() > Cause.NOTHING_WRONG.priorWeight()))
                .isEmpty();
    }

    @Test
    void looksAtPlacesShowWhatPasses() {
        assertThat(Cause.FILM_BREAKER.shownBy(Part.WATER_SURFACE)).isTrue();
        assertThat(Cause.FILM_BREAKER.shownBy(Part.ADDITIVES)).isFalse();
        assertThat(Cause.MEDICATION.shownBy(Part.ADDITIVES)).isTrue();
        assertThat(Cause.FOAMING_AGENT.shownBy(Part.ADDITIVES)).isTrue();
        assertThat(Cause.NECK_DIRTY.shownBy(Part.NECK_AND_CUP)).isFalse();
    }
}
