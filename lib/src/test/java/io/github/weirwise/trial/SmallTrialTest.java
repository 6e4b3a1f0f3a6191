package io.github.weirwise.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A small trial with wide bounds; the command {@code trial} plays the large one. */
class SmallTrialTest {
    private static final Trial TRIAL = new Trial("small test", 1, 200, Hardship.USUAL);

    @Test
    void whoKnowsTheTruthGetsNearlyAllDoneAndTheRulesFarFewer() {
        Score oracle = TRIAL.play(List.of(Field.oracle()), 2).get(0);
        assertThat(oracle.done3()).isGreaterThan(0.93);
        assertThat(oracle.harmful()).isLessThan(0.02);
        for (Score rule : TRIAL.play(Field.rules(), 2)) {
            assertThat(rule.done3()).as(rule.name()).isLessThan(0.6);
        }
        Score nothing = TRIAL.play(List.of(Field.doNothing()), 2).get(0);
        assertThat(nothing.inBand3()).isBetween(0.15, 0.5);
    }

    @Test
    void theAdviserBeatsTheWaitingRule() {
        Trial few = new Trial("small test", 3, 10, Hardship.USUAL);
        Score rule = few.play(List.of(Field.rules().get(1)), 2).get(0);
        Score adviser = few.play(List.of(Field.adviser()), 2).get(0);
        assertThat(adviser.done3()).isGreaterThan(rule.done3());
        assertThat(adviser.harmful()).isLessThan(rule.harmful());
    }

    @Test
    void theSameSeedGivesTheSameTableOnAnyNumberOfThreads() {
        Trial few = new Trial("small test", 2, 40, Hardship.USUAL);
        List<Score> one = few.play(List.of(Field.rules().get(1), Field.random()), 1);
        List<Score> two = few.play(List.of(Field.rules().get(1), Field.random()), 2);
        assertThat(TrialTables.policies(one)).isEqualTo(TrialTables.policies(two));
        assertThat(one).isEqualTo(two);
    }

    @Test
    void tuningAndReportingTanksDiffer() {
        assertThat(Dice.tankSeed("tune", 1, 7)).isNotEqualTo(Dice.tankSeed("report", 1, 7));
    }
}
