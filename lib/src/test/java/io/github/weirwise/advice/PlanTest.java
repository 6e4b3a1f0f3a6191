package io.github.weirwise.advice;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.diagnosis.RandomJournals;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is weighed against what. */
class PlanTest {
    private static final SkimmerUnit UNIT = FirstRoundUnits.middle();

    private static Belief belief(double crestMm, long seed) {
        Journal journal = RandomJournals.of(seed);
        return Belief.of(
                UNIT,
                UNIT.ratedSettings(crestMm),
                journal,
                journal.entries().get(0).at().plusSeconds(300));
    }

    private static List<Plan.Option> options(Belief belief, Set<Part> mayService) {
        return new Plan(belief, new Outlay(belief, Efforts.USUAL), false)
                .options(belief.prospects(), mayService, false);
    }

    @Test
    void theCheapestIsFirstAndToRestIsAlwaysWeighed() {
        for (long seed = 0; seed < 10; seed++) {
            List<Plan.Option> all = options(belief(205, seed), Set.of(Part.NECK_AND_CUP, Part.AIR_LINE));
            assertThat(all).isSortedAccordingTo(Comparator.comparingDouble(Plan.Option::cost));
            assertThat(all.stream().filter(Plan.Option::rests)).hasSize(1);
            assertThat(all).allSatisfy(option -> assertThat(option.cost()).isFinite());
        }
    }

    @Test
    void movesStayWithinTheirLimitsAndTheWeirs() {
        for (double crest : new double[] {150, 155, 205, 266, 270}) {
            assertThat(options(belief(crest, 1), Set.of())).allSatisfy(option -> {
                assertThat(option.mm()).isBetween(-15.0, 25.0);
                assertThat(crest + option.mm())
                        .isBetween(UNIT.weir().lowestCrestMm(), UNIT.weir().highestCrestMm());
            });
        }
        assertThat(options(belief(270, 1), Set.of())).noneMatch(option -> option.mm() > 0);
        assertThat(options(belief(150, 1), Set.of())).noneMatch(option -> option.mm() < 0);
    }

    @Test
    void onlyPartsThatMayBeServicedAreAndNeverMoreThanFourAtOnce() {
        Set<Part> may = Set.of(
                Part.NECK_AND_CUP, Part.AIR_LINE, Part.CUP_VENT, Part.SEATING, Part.FILTER_PAD, Part.RETURN_PUMP);
        List<Plan.Option> all = options(belief(205, 2), may);
        assertThat(all).allSatisfy(option -> {
            assertThat(may).containsAll(option.parts());
            assertThat(option.parts()).hasSizeLessThanOrEqualTo(4);
        });
        assertThat(all.stream().mapToInt(option -> option.parts().size())).contains(1, 2, 3, 4);
        assertThat(options(belief(205, 2), Set.of()))
                .allMatch(option -> option.parts().isEmpty());
    }

    @Test
    void theCheapestCostIsThatOfTheCheapestOfAllThoughDearOnesAreNotReckonedThrough() {
        Set<Part> may = Set.copyOf(Part.SERVICEABLE);
        for (long seed = 0; seed < 30; seed++) {
            Belief belief = belief(200, seed);
            Plan plan = new Plan(belief, new Outlay(belief, Efforts.USUAL), false);
            double least = plan.options(belief.prospects(), may, true).stream()
                    .filter(option -> option.parts().size() <= 1)
                    .mapToDouble(Plan.Option::cost)
                    .min()
                    .orElseThrow();
            assertThat(plan.best(belief.prospects(), may)).isEqualTo(least);
        }
    }
}
