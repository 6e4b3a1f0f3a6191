package io.github.weirwise.advice;

import static io.github.weirwise.advice.Situations.NOW;
import static io.github.weirwise.advice.Situations.hoursAgo;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Observation;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a reading could show, and what it is worth to take it. */
class LookChoiceTest {
    private final Situation dry = Situations.of(
            200,
            Situations.round(hoursAgo(24), 18, 40, DarknessWord.COFFEE, FoamLookWord.LOW_IN_NECK),
            Situations.round(NOW, 18, 30, DarknessWord.COFFEE, FoamLookWord.LOW_IN_NECK));

    @ParameterizedTest
    @EnumSource
    void everyLookHasOutcomesAndEachIsAReadingOfItsKind(LookKind kind) {
        List<Observation> outcomes = new LookOutcomes(dry).of(kind);
        assertThat(outcomes).isNotEmpty().hasSizeLessThanOrEqualTo(7).doesNotHaveDuplicates();
        if (kind.part().isPresent()) {
            assertThat(outcomes)
                    .extracting(each -> ((Observation.Inspection) each).finding())
                    .containsExactly(Finding.GOOD, Finding.DOUBTFUL, Finding.BAD);
            assertThat(outcomes)
                    .allSatisfy(each -> assertThat(((Observation.Inspection) each).part())
                            .isEqualTo(kind.part().get()));
        } else if (kind != LookKind.FOAM_LOOK) {
            assertThat(outcomes)
                    .allSatisfy(each -> assertThat(LookOf.kind(each)).contains(kind));
        }
    }

    @Test
    void theOutcomesSpanWhatThePossibilitiesExpect() {
        double[] expected = dry.outlooks().stream()
                .mapToDouble(outlook -> outlook.airLitresPerHour())
                .sorted()
                .toArray();
        double[] shown = new LookOutcomes(dry)
                .of(LookKind.AIR_FLOW).stream()
                        .mapToDouble(each -> ((Observation.AirFlow) each).litresPerHour())
                        .toArray();
        assertThat(shown).isSorted();
        assertThat(shown[0]).isBetween(expected[0], expected[expected.length / 4]);
        assertThat(shown[shown.length - 1]).isBetween(expected[3 * expected.length / 4], expected[expected.length - 1]);
        double middle = dry.outlooks().stream()
                .mapToDouble(outlook -> outlook.submergenceMm())
                .sorted()
                .skip(dry.outlooks().size() / 2)
                .findFirst()
                .orElseThrow();
        assertThat(new LookOutcomes(dry).of(LookKind.FUNNEL_LEVEL))
                .anySatisfy(each ->
                        assertThat(((Observation.FunnelLevel) each).mm()).isCloseTo(middle, within(2.0)));
    }

    @Test
    void lookingOnIsWorthMoreWithMorePatienceAndLessWithMoreOpenQuestions() {
        double[] even = {0.4, 0.3, 0.2, 0.1};
        int[] ranks = Questions.ranks(even);
        double before = 0;
        for (int looks = 1; looks <= 3; looks++) {
            double worth = Inquiry.worth(even, ranks, looks, 1);
            assertThat(worth).isGreaterThan(before).isLessThan(0.93);
            before = worth;
        }
        assertThat(Inquiry.worth(even, ranks, 0, 1))
                .as("without looks the likeliest is tried")
                .isLessThan(Inquiry.worth(even, ranks, 1, 1))
                .isGreaterThan(0.25);
        assertThat(Inquiry.worth(even, ranks, 1, 3)).isGreaterThan(Inquiry.worth(even, ranks, 1, 1));
        double[] one = {1, 0, 0, 0};
        assertThat(Inquiry.worth(one, Questions.ranks(one), 1, 1)).isCloseTo(0.93 - 0.035, within(1e-9));
        double[] half = {0.2, 0.15, 0.1, 0.05};
        assertThat(Inquiry.worth(half, Questions.ranks(half), 2, 1))
                .isCloseTo(Inquiry.worth(even, ranks, 2, 1) / 2, within(1e-9));
    }

    @Test
    void aLookThatSettlesAQuestionIsWorthMoreThanOneThatCannot() {
        StepValues values = new StepValues(dry);
        LookValue value = new LookValue(dry, values, dry.options().looks(), 3, 2);
        double best = Double.NEGATIVE_INFINITY;
        for (int step = 0; step < values.steps().size(); step++) {
            best = Math.max(best, values.mean(step));
        }
        double[] worths =
                Arrays.stream(LookKind.values()).mapToDouble(value::after).toArray();
        assertThat(Arrays.stream(worths).max().orElseThrow()).isBetween(best, 1.0);
        assertThat(worths).as("some looks tell next to nothing here").contains(0);
        double impatient = Arrays.stream(LookKind.values())
                .mapToDouble(new LookValue(dry, values, dry.options().looks(), 1, 2)::after)
                .max()
                .orElseThrow();
        assertThat(impatient).isLessThanOrEqualTo(Arrays.stream(worths).max().orElseThrow());
    }

    @Test
    void everyOptionMustBeGiven() {
        AdviserOptions usual = AdviserOptions.DEFAULT;
        assertThatThrownBy(() -> new AdviserOptions(null, usual.clocks(), usual.looks()))
                .isInstanceOf(NullPointerException.class);
        assertThatThrownBy(() -> new AdviserOptions(usual.belief(), null, usual.looks()))
                .isInstanceOf(NullPointerException.class);
        assertThatThrownBy(() -> new Adviser(null)).isInstanceOf(NullPointerException.class);
    }
}
