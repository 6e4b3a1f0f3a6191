package io.github.weirwise.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The truth behaves like a unit should, tank by tank, before anybody is judged by it. */
class TruthTest {
    private static final Trial TRIAL = new Trial("truth test", 1, 200, Hardship.USUAL);

    private static List<TankPlan> plans() {
        return IntStream.range(0, TRIAL.tanks()).mapToObj(TRIAL::plan).toList();
    }

    @Test
    void aHealthyUnitReachesItsTargetWithinTheWeirsTravel() {
        for (TankPlan plan : plans()) {
            Truth truth = Truth.healthy(plan);
            double mark = truth.markFor(0, 0, each -> true);
            assertThat(truth.steady(0, mark).logAmount()).as("%s", plan.label()).isBetween(-0.02, 0.02);
            assertThat(truth.steady(0, mark).levelMm())
                    .isBetween(
                            plan.unit().sheet().target().submergenceMm() - 10,
                            plan.unit().sheet().target().submergenceMm() + 10);
        }
    }

    @Test
    void aHigherWeirGivesMoreAndPalerSkimmate() {
        for (TankPlan plan : plans()) {
            Truth truth = Truth.healthy(plan);
            double mark = truth.markFor(0, 0, each -> true);
            TruePoint low = truth.steady(0, mark - 2);
            TruePoint high = truth.steady(0, mark + 2);
            assertThat(high.logAmount()).isGreaterThan(low.logAmount());
            assertThat(high.gasPerLiquid()).isLessThan(low.gasPerLiquid());
        }
    }

    @Test
    void unitsAnswerToTheWeirOverARangeOfSteepnesses() {
        double[] perMm = plans().stream()
                .mapToDouble(plan -> {
                    Truth truth = Truth.healthy(plan);
                    double mark = truth.markFor(0, 0, each -> true);
                    return (truth.steady(0, mark + 2).logAmount()
                                    - truth.steady(0, mark - 2).logAmount())
                            / 4;
                })
                .sorted()
                .toArray();
        assertThat(perMm[20]).as("calm tenth").isBetween(0.05, 0.12);
        assertThat(perMm[180]).as("steep tenth").isBetween(0.18, 0.35);
    }

    @Test
    void lessAirDriesAndLessFlowLowers() {
        for (TankPlan plan : plans()) {
            TrueUnit unit = plan.unit();
            double crest = Truth.healthy(plan).markFor(0, 0, each -> true) + unit.crestOffsetMm();
            TruePoint before = TrueLaw.at(unit, crest, new Strain());
            Strain lessAir = new Strain();
            lessAir.air = 0.8;
            assertThat(TrueLaw.at(unit, crest, lessAir).logAmount()).isLessThan(before.logAmount() - 0.3);
            Strain lessFlow = new Strain();
            lessFlow.flow = 0.8;
            assertThat(TrueLaw.at(unit, crest, lessFlow).levelMm()).isLessThan(before.levelMm() - 1.5);
        }
    }

    /** Francis formula Q = 1.84 b h^1.5 (from memory), which all sharp-crested formulas approach over a high weir. */
    @Test
    void theWeirAgreesWithFrancisAtAGoodHead() {
        double head = TrueWeir.headM(1.84 * Math.pow(0.2, 1.5), 1, 1, 1);
        assertThat(head).isCloseTo(0.2, withinPercentage(1.5));
    }

    @Test
    void anUnservicedFaultStaysAndAServicedOneGoes() {
        Ailment fault = new Ailment(HiddenCause.NECK, 0.5, -48, 0.01, 1, 0);
        assertThat(fault.wantsService(24)).isTrue();
        fault.service(io.github.weirwise.unit.Part.FILTER_PAD, 24);
        assertThat(fault.wantsService(25)).isTrue();
        fault.service(io.github.weirwise.unit.Part.NECK_AND_CUP, 30);
        assertThat(fault.size(31)).isZero();
    }
}
