package io.github.weirwise.advice;

import static io.github.weirwise.advice.Situations.NOW;
import static io.github.weirwise.advice.Situations.hoursAgo;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.diagnosis.Outlook;
import io.github.weirwise.diagnosis.Possibility;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.Part;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a step is worth in one possibility: order, not numbers. */
class StepValuesTest {
    private static final List<Situation> SCENES = List.of(
            Situations.of(
                    198,
                    Situations.round(hoursAgo(24), 15, 60, DarknessWord.COFFEE, FoamLookWord.STIFF),
                    Situations.round(NOW, 15, 55, DarknessWord.COFFEE, FoamLookWord.STIFF)),
            Situations.of(
                    205,
                    Situations.round(hoursAgo(48), 22, 250, DarknessWord.DARK_TEA, FoamLookWord.CREAMY),
                    Situations.round(hoursAgo(24), 20, 25, DarknessWord.COFFEE, FoamLookWord.LOW_IN_NECK),
                    Situations.round(NOW, 20, 12, DarknessWord.COFFEE, FoamLookWord.NONE)),
            Situations.of(
                    216,
                    Situations.round(hoursAgo(24), 34, 900, DarknessWord.LIGHT_TEA, FoamLookWord.RUNNY),
                    Situations.round(NOW, 34, 1000, DarknessWord.STRAW, FoamLookWord.STREAMING)),
            Situations.of(
                    Situations.onTarget(hoursAgo(24)),
                    new Happening(hoursAgo(20), Happening.Kind.FED_HEAVILY),
                    Situations.round(NOW, 22, 60, DarknessWord.COFFEE, FoamLookWord.STIFF)),
            Situations.of(Situations.onTarget(hoursAgo(24)), Situations.onTarget(NOW)));

    private interface Look {
        void at(Situation situation, StepValues values, int possibility, Possibility each, Outlook now);
    }

    private static int everywhere(Look look) {
        int looked = 0;
        for (Situation situation : SCENES) {
            StepValues values = new StepValues(situation);
            for (int i = 0; i < situation.sample().size(); i++) {
                look.at(
                        situation,
                        values,
                        i,
                        situation.sample().get(i),
                        situation.outlooks().get(i));
                looked++;
            }
        }
        return looked;
    }

    private static double hold(StepValues values, int i) {
        for (int step = 0; step < values.steps().size(); step++) {
            if (values.steps().get(step) instanceof Step.Hold) {
                return values.worth(step, i);
            }
        }
        throw new AssertionError("no hold among the steps");
    }

    private static double bestMove(StepValues values, int i) {
        double best = Double.NEGATIVE_INFINITY;
        for (int step = 0; step < values.steps().size(); step++) {
            if (values.steps().get(step) instanceof Step.MoveWeir) {
                best = Math.max(best, values.worth(step, i));
            }
        }
        return best;
    }

    private static Optional<Double> service(StepValues values, Part part, int i) {
        int step = values.steps().indexOf(new Step.ServicePart(part));
        return step < 0 ? Optional.empty() : Optional.of(values.worth(step, i));
    }

    @Test
    void theFaultyPartIsServicedRatherThanMovedAroundOrWaitedFor() {
        int[] faults = {0};
        everywhere((situation, values, i, each, now) -> {
            Set<Part> faulty = each.faultyParts(StepValues.FAULT);
            if (faulty.size() == 1) {
                double service = service(values, faulty.iterator().next(), i).orElseThrow();
                assertThat(service).isGreaterThan(hold(values, i)).isGreaterThan(bestMove(values, i) + 0.2);
                assertThat(service).isGreaterThan(0.8);
                faults[0]++;
            }
        });
        assertThat(faults[0]).isGreaterThan(100);
    }

    @Test
    void aServiceOfASoundPartIsInVain() {
        int[] vain = {0};
        everywhere((situation, values, i, each, now) -> {
            for (Part part : Part.values()) {
                if (!each.faultyParts(StepValues.FAULT).contains(part) && !each.passing(StepValues.PASSING)) {
                    service(values, part, i).ifPresent(worth -> {
                        vain[0]++;
                        assertThat(worth).isLessThan(hold(values, i));
                    });
                }
            }
        });
        assertThat(vain[0]).isGreaterThan(100);
    }

    @Test
    void whatPassesByItselfIsWaitedFor() {
        int[] passing = {0};
        everywhere((situation, values, i, each, now) -> {
            if (each.passing(StepValues.PASSING)
                    && each.faultyParts(StepValues.FAULT).isEmpty()) {
                assertThat(hold(values, i)).isGreaterThan(0.9).isGreaterThan(bestMove(values, i) + 0.5);
                passing[0]++;
            }
        });
        assertThat(passing[0]).isPositive();
    }

    @Test
    void aSoundUnitOnTargetIsLeftAloneAndOneOffTargetMovedTowardsIt() {
        int[] on = {0};
        int[] off = {0};
        int[] towards = {0};
        everywhere((situation, values, i, each, now) -> {
            boolean sound = each.faultyParts(StepValues.FAULT).isEmpty() && !each.passing(StepValues.PASSING);
            Band band = Band.of(situation.unit());
            if (sound && band.holds(now) && band.comfort(now) > 0.95) {
                assertThat(hold(values, i)).isGreaterThan(bestMove(values, i));
                on[0]++;
            }
            if (sound && !band.holds(now) && !now.flooding()) {
                assertThat(bestMove(values, i)).isGreaterThan(hold(values, i));
                towards[0] += moveByMm(values, i) > 0 == now.logAmount() < band.low() ? 1 : 0;
                off[0]++;
            }
        });
        assertThat(on[0]).isGreaterThan(20);
        assertThat(off[0]).isGreaterThan(20);
        assertThat(towards[0]).as("a few are on their way back by themselves").isGreaterThan((int) (0.9 * off[0]));
    }

    /** The move that is worth most. */
    private static double moveByMm(StepValues values, int i) {
        double best = Double.NEGATIVE_INFINITY;
        double byMm = 0;
        for (int step = 0; step < values.steps().size(); step++) {
            if (values.steps().get(step) instanceof Step.MoveWeir move && values.worth(step, i) > best) {
                best = values.worth(step, i);
                byMm = move.byMm();
            }
        }
        return byMm;
    }

    @Test
    void noMoveThatFillsTheCupIsWorthAnything() {
        int[] floods = {0};
        everywhere((situation, values, i, each, now) -> {
            Band band = Band.of(situation.unit());
            for (int step = 0; step < values.steps().size(); step++) {
                if (values.steps().get(step) instanceof Step.MoveWeir move) {
                    Outlook after = each.ahead(move.toCrestMm(), situation.judgeHours(), null);
                    if (band.overflows(after) && move.byMm() > 0) {
                        assertThat(values.worth(step, i)).isEqualTo(0.05);
                        floods[0]++;
                    }
                }
            }
        });
        assertThat(floods[0]).isGreaterThan(100);
    }

    @Test
    void ofTwoMovesThatBothReachTheTargetTheSmallerCostsLess() {
        Situation dry = SCENES.get(0);
        StepValues values = new StepValues(dry);
        Band band = Band.of(dry.unit());
        int compared = 0;
        for (int i = 0; i < dry.sample().size(); i++) {
            Possibility each = dry.sample().get(i);
            if (each.faultyParts(StepValues.FAULT).isEmpty() && !each.passing(StepValues.PASSING)) {
                continue;
            }
            double before = Double.POSITIVE_INFINITY;
            for (int step = 0; step < values.steps().size(); step++) {
                if (values.steps().get(step) instanceof Step.MoveWeir move
                        && move.byMm() > 0
                        && !band.overflows(each.ahead(move.toCrestMm(), dry.judgeHours(), null))) {
                    assertThat(values.worth(step, i))
                            .as("hides a fault, the more the larger")
                            .isLessThan(before);
                    before = values.worth(step, i);
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(20);
    }

    @Test
    void theMeanIsThatOfThePossibilitiesAndTheBestIsItsGreatest() {
        for (Situation situation : SCENES) {
            StepValues values = new StepValues(situation);
            double greatest = Double.NEGATIVE_INFINITY;
            for (int step = 0; step < values.steps().size(); step++) {
                double sum = 0;
                for (int i = 0; i < situation.sample().size(); i++) {
                    sum += values.worth(step, i);
                }
                assertThat(values.mean(step)).isCloseTo(sum / situation.sample().size(), within(1e-12));
                greatest = Math.max(greatest, values.mean(step));
            }
            assertThat(values.mean(values.best())).isEqualTo(greatest);
        }
    }

    @Test
    void theWeirIsNotMovedBeyondItsTravel() {
        Situation high = Situations.of(268, Situations.onTarget(NOW));
        assertThat(new StepValues(high).steps())
                .filteredOn(Step.MoveWeir.class::isInstance)
                .extracting(step -> ((Step.MoveWeir) step).toCrestMm())
                .isNotEmpty()
                .allMatch(crest -> crest <= 270);
        assertThat(new StepValues(SCENES.get(4)).steps())
                .filteredOn(Step.MoveWeir.class::isInstance)
                .allSatisfy(step -> assertThat(((Step.MoveWeir) step).toCrestMm())
                        .isCloseTo(205 + ((Step.MoveWeir) step).byMm(), within(1e-9)));
    }

    @Test
    void aPartJustFoundGoodIsTakenApartLessGladly() {
        Reading dry = Situations.round(NOW, 20, 12, DarknessWord.COFFEE, FoamLookWord.NONE);
        Reading before = Situations.round(hoursAgo(24), 20, 25, DarknessWord.COFFEE, FoamLookWord.LOW_IN_NECK);
        Reading well = Situations.onTarget(hoursAgo(48));
        StepValues unseen = new StepValues(Situations.of(well, before, dry));
        int compared = 0;
        for (Part part : List.of(Part.AIR_LINE, Part.NECK_AND_CUP, Part.INJECTOR_PUMP, Part.INJECTOR_NOZZLE)) {
            Reading good = Reading.of(NOW, new Observation.Inspection(part, Finding.GOOD));
            double seen = most(new StepValues(Situations.of(well, before, dry, good)), part);
            if (seen > 0 && most(unseen, part) > 0.8) {
                assertThat(seen).isLessThan(most(unseen, part) - 0.2);
                compared++;
            }
        }
        assertThat(compared).isPositive();
    }

    /** Worth of a service where the part is at fault and nothing else is. */
    private static double most(StepValues values, Part part) {
        int step = values.steps().indexOf(new Step.ServicePart(part));
        double most = 0;
        for (int i = 0; step >= 0 && i < SCENES.get(0).sample().size(); i++) {
            most = Math.max(most, values.worth(step, i));
        }
        return most;
    }
}
