package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Range;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every row of the table of causes keeps the table's promises; a new row is checked without a word here. */
class CauseTest {
    private static final int STEPS = 20;

    private static final Map<String, ToDoubleFunction<Influence>> COMPONENTS = Map.of(
            "air", Influence::airFactor,
            "flow", Influence::flowFactor,
            "life", Influence::lifeFactor,
            "rise", Influence::riseFactor,
            "slip", Influence::slipMm,
            "back pressure", Influence::backPressureMm,
            "drowned", Influence::drownedByMm,
            "strength", Influence::strengthFactor,
            "salinity", Influence::salinityShift,
            "gas", Influence::gasFactor);

    /** How long what passes by itself is felt, h: common practice, from memory. */
    private static final Map<Cause, Range> PASSES_WITHIN_HOURS = Map.of(
            Cause.FILM_BREAKER, new Range(12, 24),
            Cause.FOAMING_AGENT, new Range(48, 168),
            Cause.MEDICATION, new Range(48, 168),
            Cause.BREAK_IN, new Range(72, 336),
            Cause.JUST_CHANGED, new Range(4, 24));

    private static DoubleStream sizes() {
        return IntStream.rangeClosed(0, STEPS).mapToDouble(step -> step / (double) STEPS);
    }

    @ParameterizedTest
    @EnumSource(Cause.class)
    void theEffectStaysWithinItsLimitsAtEverySize(Cause cause) {
        assertThatCode(() -> sizes().forEach(size -> cause.effect().at(size))).doesNotThrowAnyException();
    }

    @ParameterizedTest
    @EnumSource(Cause.class)
    void togetherWithAnyOtherFaultItStaysWithinTheLimitsToo(Cause cause) {
        assertThatCode(() -> Arrays.stream(Cause.values())
                        .filter(other -> other.serviceable() && other != cause)
                        .forEach(
                                other -> cause.effect().at(1).and(other.effect().at(1))))
                .doesNotThrowAnyException();
    }

    /** More of a fault never does less; otherwise its size could not be told from what it does. */
    @ParameterizedTest
    @EnumSource(Cause.class)
    void aLargerFaultMovesEverythingFurtherTheSameWay(Cause cause) {
        if (!cause.serviceable()) {
            return;
        }
        COMPONENTS.forEach((name, component) -> {
            double[] values = sizes().map(
                            size -> component.applyAsDouble(cause.effect().at(size)))
                    .toArray();
            double way = Math.signum(values[STEPS] - values[0]);
            for (int i = 1; i <= STEPS; i++) {
                assertThat(way * (values[i] - values[i - 1]))
                        .as("%s of %s", name, cause)
                        .isGreaterThanOrEqualTo(0);
            }
        });
    }

    @ParameterizedTest
    @EnumSource(Cause.class)
    void theRemedyIsWhole(Cause cause) {
        Remedy remedy = cause.remedy();
        assertThat(remedy.part().isPresent()).isEqualTo(remedy.kind() == Remedy.Kind.SERVICE);
        assertThat(remedy.hours()).isGreaterThan(0);
        assertThat(cause.serviceable() && cause.passes()).isFalse();
        if (cause.growth() == Cause.Growth.DAYS) {
            assertThat(cause.serviceable()).as("what grows ends with a service").isTrue();
        }
        if (!cause.servicePart().isEmpty()) {
            assertThat(changes(cause)).as("a faulty part changes something").isTrue();
        }
    }

    @ParameterizedTest
    @EnumSource(Cause.class)
    void hasWordsForItselfAndForWhatPutsItRight(Cause cause) {
        PhraseBook book = PhraseBook.ENGLISH_METRIC;
        assertThat(book.say(Phrase.of(cause.nameKey()))).isNotBlank();
        cause.servicePart().ifPresent(part -> {
            assertThat(book.say(Phrase.of("diagnosis.part." + part))).isNotBlank();
            assertThat(book.say(Phrase.of("advice.service." + part))).endsWith(".");
        });
    }

    @Test
    void noTwoCausesReadTheSame() {
        assertThat(Arrays.stream(Cause.values())
                        .map(cause -> PhraseBook.ENGLISH_METRIC.say(Phrase.of(cause.nameKey()))))
                .doesNotHaveDuplicates();
    }

    /** Weir too low, weir too high and nothing wrong are one possibility until the amount is known. */
    @Test
    void exactlyThreeCausesAreToldApartAfterTheFact() {
        Set<Cause> still = Arrays.stream(Cause.values())
                .filter(cause -> !changes(cause) && cause.remedy().kind() != Remedy.Kind.READ_AGAIN)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Cause.class)));
        assertThat(still).containsExactly(Cause.WEIR_TOO_LOW, Cause.WEIR_TOO_HIGH, Cause.NOTHING_WRONG);
        assertThat(Arrays.stream(Cause.values()).filter(cause -> cause.priorWeight() == 0))
                .containsExactly(Cause.WEIR_TOO_LOW, Cause.WEIR_TOO_HIGH);
        assertThat(Arrays.stream(Cause.values()).filter(cause -> cause.priorWeight() < 0))
                .isEmpty();
        assertThat(Arrays.stream(Cause.values()).mapToDouble(Cause::priorWeight).max())
                .hasValue(Cause.NOTHING_WRONG.priorWeight());
    }

    @Test
    void whatPassesTakesAsLongAsCommonPracticeSays() {
        Set<Cause> passing = Arrays.stream(Cause.values()).filter(Cause::passes).collect(Collectors.toSet());
        assertThat(PASSES_WITHIN_HOURS.keySet()).isSubsetOf(passing);
        PASSES_WITHIN_HOURS.forEach(
                (cause, hours) -> assertThat(hours.contains(cause.remedy().hours()))
                        .as("%s passes within %s h", cause, hours)
                        .isTrue());
    }

    private static boolean changes(Cause cause) {
        return sizes().anyMatch(size -> !cause.effect().at(size).equals(Influence.NONE));
    }
}
