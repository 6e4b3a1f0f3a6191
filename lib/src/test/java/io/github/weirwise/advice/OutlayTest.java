package io.github.weirwise.advice;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.diagnosis.Mixture;
import io.github.weirwise.diagnosis.RandomJournals;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a step costs goes with the amount it leaves and with the efforts it takes. */
class OutlayTest {
    private static final SkimmerUnit UNIT = FirstRoundUnits.middle();
    private static final double SURE = 0.05;

    private static Belief belief(long seed) {
        Journal journal = RandomJournals.of(seed);
        Instant now = journal.entries().get(journal.entries().size() - 1).at();
        return Belief.of(UNIT, UNIT.ratedSettings(RandomJournals.CREST_MM), journal, now);
    }

    private static Mixture at(double log) {
        return new Mixture(new double[] {1}, new double[] {log}, new double[] {SURE});
    }

    @Test
    void aDayOnTargetCostsNothingADayOutOneAndAFloodedDayThree() {
        Outlay outlay = new Outlay(belief(1), Efforts.USUAL);
        assertThat(outlay.badly(at(0))).isLessThan(1e-6);
        assertThat(outlay.badly(at(-3))).isBetween(0.999, 1.001);
        assertThat(outlay.badly(at(1.1))).isBetween(0.999, 1.001);
        assertThat(outlay.badly(at(4))).isBetween(2.999, 3.001);
    }

    @Test
    void aDayCostsMoreTheFartherItIsFromTheMiddle() {
        Outlay outlay = new Outlay(belief(1), Efforts.USUAL);
        double before = 0;
        for (double log = Outlay.aim(); log < 4; log += 0.1) {
            double cost = outlay.badly(new Mixture(new double[] {1}, new double[] {log}, new double[] {0.3}));
            assertThat(cost).as("log %s", log).isGreaterThanOrEqualTo(before);
            before = cost;
        }
    }

    @Test
    void aMoveCostsItsEffortMoreThanTheSameForNothing() {
        for (long seed = 0; seed < 10; seed++) {
            Belief belief = belief(seed);
            double free =
                    new Outlay(belief, efforts(0, 1)).ahead(belief.prospects()).cost(2, Set.of());
            double usual = new Outlay(belief, efforts(0.1, 1))
                    .ahead(belief.prospects())
                    .cost(2, Set.of());
            double dear = new Outlay(belief, efforts(0.2, 1))
                    .ahead(belief.prospects())
                    .cost(2, Set.of());
            assertThat(usual).isBetween(free + 0.1, free + 0.2 + 1e-9);
            assertThat(dear).isGreaterThan(usual);
        }
    }

    @Test
    void aServiceCostsByItsRow() {
        Belief belief = belief(2);
        for (Part part : Part.SERVICEABLE) {
            double free = new Outlay(belief, efforts(0.1, 0))
                    .ahead(belief.prospects())
                    .cost(0, Set.of(part));
            double dear = new Outlay(belief, efforts(0.1, 2))
                    .ahead(belief.prospects())
                    .cost(0, Set.of(part));
            assertThat(dear - free)
                    .as(part.name())
                    .isBetween(
                            2 * part.work().effortDays() - 1e-9, 2 * part.work().effortDays() + 1e-9);
        }
    }

    @Test
    void aCupFloodsWhenItHoldsLessThanADaysAmount() {
        assertThat(Math.exp(Outlay.floodLog(UNIT)))
                .isBetween(UNIT.cupMl() / UNIT.target().skimmateMlPerDay() - 1e-9, 4 + 1e-9);
        for (SkimmerUnit unit : FirstRoundUnits.units()) {
            assertThat(Outlay.floodLog(unit)).isGreaterThan(Math.log(2.4));
        }
    }

    private static Efforts efforts(double move, double work) {
        return new Efforts(1, 3, move, 0.1, work, 0.1);
    }
}
