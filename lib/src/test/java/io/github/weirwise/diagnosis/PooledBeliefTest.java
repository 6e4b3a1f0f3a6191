package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Beliefs from other draws taken together, and what may be said of any observation at best. */
class PooledBeliefTest {
    private static final Journal JOURNAL = Journals.driedOut(new Observation.AirFlow(120));

    private static Belief belief(int times) {
        BeliefOptions options = BeliefOptions.DEFAULT.again(times);
        return Belief.of(Journals.UNIT, Journals.SET, JOURNAL, Journals.NOW, options);
    }

    private static double share(Belief belief, Cause cause) {
        return belief.possibilities().stream()
                .filter(each -> each.cause() == cause)
                .mapToDouble(Possibility::weight)
                .sum();
    }

    @Test
    void eachBeliefCountsAlike() {
        Belief one = belief(1);
        Belief other = belief(2);
        Belief pooled = Belief.pooled(List.of(one, other));
        assertThat(pooled.possibilities())
                .hasSize(one.possibilities().size() + other.possibilities().size());
        for (Cause cause : Cause.values()) {
            assertThat(share(pooled, cause)).isCloseTo(0.5 * (share(one, cause) + share(other, cause)), within(1e-9));
        }
    }

    @Test
    void otherDrawsAreOther() {
        assertThat(BeliefOptions.DEFAULT.again(1).seed())
                .isNotEqualTo(BeliefOptions.DEFAULT.seed())
                .isNotEqualTo(BeliefOptions.DEFAULT.again(2).seed());
    }

    /** What allows a bad proposal to be given up early must never be too low. */
    @Test
    void noObservationIsLikelierThanTheMostThatIsSaidOfIt() {
        Belief belief = belief(1);
        for (int k = 0; k < belief.observations().size(); k++) {
            double most = Math.max(0, Likelihood.most(belief.observations().get(k)));
            for (int i = 0; i < belief.possibilities().size(); i++) {
                assertThat(belief.observationLog(i, k)).isLessThanOrEqualTo(most + 1e-12);
            }
        }
    }
}
