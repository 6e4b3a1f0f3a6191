package io.github.weirwise.advice;

import static io.github.weirwise.advice.Situations.NOW;
import static io.github.weirwise.advice.Situations.hoursAgo;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.diagnosis.Possibility;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.FoamLookWord;
import java.util.Arrays;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which question each possibility answers, and which is asked first. */
class QuestionsTest {
    private final Situation dry = Situations.of(
            200,
            Situations.round(hoursAgo(24), 18, 40, DarknessWord.COFFEE, FoamLookWord.LOW_IN_NECK),
            Situations.round(NOW, 18, 30, DarknessWord.COFFEE, FoamLookWord.LOW_IN_NECK));
    private final Questions questions = new Questions(dry.sample());

    @Test
    void aFaultAnswersTheQuestionOfItsPartAndASoundUnitThatOfTheWeir() {
        int faults = 0;
        int sound = 0;
        for (int i = 0; i < dry.sample().size(); i++) {
            Possibility each = dry.sample().get(i);
            Set<io.github.weirwise.unit.Part> faulty = each.faultyParts(StepValues.FAULT);
            if (!faulty.isEmpty()) {
                assertThat(questions.of(i))
                        .isEqualTo(Questions.about(faulty.iterator().next()));
                faults++;
            } else if (!each.passing(StepValues.PASSING)) {
                assertThat(questions.of(i)).isEqualTo(Questions.WEIR);
                sound++;
            } else {
                assertThat(questions.of(i))
                        .isNotEqualTo(Questions.WEIR)
                        .isNotEqualTo(Questions.about(io.github.weirwise.unit.Part.AIR_LINE));
            }
        }
        assertThat(faults).isGreaterThan(20);
        assertThat(sound).isPositive();
    }

    @Test
    void theSharesAddUpToTheWeights() {
        Random random = new Random(3);
        double[] weights = random.doubles(dry.sample().size()).toArray();
        assertThat(Arrays.stream(questions.shares(weights)).sum())
                .isCloseTo(Arrays.stream(weights).sum(), within(1e-9));
    }

    @Test
    void theGreatestShareComesFirstAndNoTwoShareAPlace() {
        Random random = new Random(4);
        for (int trial = 0; trial < 50; trial++) {
            double[] shares = random.ints(9, 0, 5).asDoubleStream().toArray();
            int[] ranks = Questions.ranks(shares);
            assertThat(ranks).containsExactlyInAnyOrder(0, 1, 2, 3, 4, 5, 6, 7, 8);
            for (int one = 0; one < shares.length; one++) {
                for (int other = 0; other < shares.length; other++) {
                    if (shares[one] > shares[other]) {
                        assertThat(ranks[one]).isLessThan(ranks[other]);
                    }
                }
            }
        }
    }
}
