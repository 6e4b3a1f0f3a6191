package io.github.weirwise.lab;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.lab.truth.Fouling;
import io.github.weirwise.lab.truth.Response;
import io.github.weirwise.lab.truth.ResponseLaw;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.Arrays;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What every truth must do, over units drawn from seeds: relations, and that a sound unit can be set. */
class TruthsTest {
    private static final int UNITS = 60;
    private static final Set<Part> FOULED_MEANS_LESS = Set.of(
            Part.AIR_LINE,
            Part.INJECTOR_PUMP,
            Part.INJECTOR_NOZZLE,
            Part.NECK_AND_CUP,
            Part.CUP_VENT,
            Part.SEATING,
            Part.WEIR_PLATE,
            Part.RETURN_PUMP,
            Part.SALT_MIX,
            Part.RETURN_WATER);

    private record Drawn(SkimmerUnit sheet, ResponseLaw law, double crestMm) {
        static Drawn of(Truth truth, int i) {
            SkimmerUnit sheet = LabUnits.ALL.get(i % LabUnits.ALL.size());
            ResponseLaw law = truth.draw(sheet, new SplittableRandom(i));
            double low = sheet.weir().lowestCrestMm();
            double high = sheet.weir().highestCrestMm();
            while (high - low > 0.01) {
                double middle = (low + high) / 2;
                if (law.at(middle, 1, new Fouling(), 0, 0).logAmount() > 0) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            return new Drawn(sheet, law, low);
        }

        double log(double byMm, Fouling fouling, double foaminess) {
            return law.at(crestMm + byMm, 1, fouling, foaminess, 0).logAmount();
        }
    }

    @ParameterizedTest
    @EnumSource
    void aSoundUnitGivesTheWantedAmountNearTheSheetsLevel(Truth truth) {
        for (int i = 0; i < UNITS; i++) {
            Drawn unit = Drawn.of(truth, i);
            Response there = unit.law.at(unit.crestMm, 1, new Fouling(), 0, 0);
            assertThat(there.logAmount()).as("amount").isBetween(-0.1, 0.1);
            assertThat(there.levelMm() - unit.sheet.target().submergenceMm())
                    .as("level over the sheet's")
                    .isBetween(-14.0, 14.0);
            assertThat(there.headMm()).as("head").isBetween(8.0, 45.0);
            assertThat(there.streaming()).isFalse();
            assertThat(there.darknessPtCo()).isBetween(700.0, 5000.0);
        }
    }

    @ParameterizedTest
    @EnumSource
    void theAmountRisesWithTheWeirAndWithFoaminess(Truth truth) {
        for (int i = 0; i < UNITS; i++) {
            Drawn unit = Drawn.of(truth, i);
            double before = Double.NEGATIVE_INFINITY;
            for (int mm = -20; mm <= 20; mm++) {
                double log = unit.log(mm, new Fouling(), 0);
                assertThat(log).isGreaterThanOrEqualTo(before - 1e-9);
                before = log;
            }
            double more = unit.log(0, new Fouling(), 0.2) - unit.log(0, new Fouling(), -0.2);
            assertThat(more).as("0.4 of foaminess on target").isBetween(0.25, 0.6);
        }
    }

    @ParameterizedTest
    @EnumSource
    void aMillimetreIsWorthWhatTheFamilyPromises(Truth truth) {
        double least = truth == Truth.GENTLE || truth == Truth.SLOW ? Math.log(1.04) : 0.02;
        double most = truth == Truth.COLUMN ? 0.7 : truth == Truth.GENTLE || truth == Truth.SLOW ? Math.log(1.36) : 0.5;
        for (int i = 0; i < UNITS; i++) {
            Drawn unit = Drawn.of(truth, i);
            double slope = (unit.log(1, new Fouling(), 0) - unit.log(-1, new Fouling(), 0)) / 2;
            assertThat(slope).isBetween(least, most);
        }
    }

    @ParameterizedTest
    @EnumSource
    void aFouledPartMeansLessAndTheCloggedPadMore(Truth truth) {
        for (int i = 0; i < UNITS; i++) {
            Drawn unit = Drawn.of(truth, i);
            for (Part part : Part.values()) {
                double sound = unit.log(0, new Fouling(), 0);
                for (double size = 0.25; size <= 1; size += 0.25) {
                    Fouling fouling = new Fouling();
                    fouling.set(part, size);
                    double log = unit.log(0, fouling, 0);
                    if (FOULED_MEANS_LESS.contains(part)) {
                        assertThat(log).as("%s at %s", part, size).isLessThanOrEqualTo(sound + 1e-9);
                    } else if (part == Part.FILTER_PAD) {
                        assertThat(log).as("%s at %s", part, size).isGreaterThanOrEqualTo(sound - 1e-9);
                    } else {
                        assertThat(log).isEqualTo(sound);
                    }
                }
                if (FOULED_MEANS_LESS.contains(part)) {
                    Fouling worst = new Fouling();
                    worst.set(part, 1);
                    assertThat(unit.log(0, worst, 0))
                            .as("%s at its worst", part)
                            .isLessThan(sound - 0.05);
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void lessAirIsLessSkimmate(Truth truth) {
        for (int i = 0; i < UNITS; i++) {
            Drawn unit = Drawn.of(truth, i);
            double before = Double.POSITIVE_INFINITY;
            for (double air = 1; air > 0.3; air -= 0.1) {
                double log = unit.law.at(unit.crestMm, air, new Fouling(), 0, 0).logAmount();
                assertThat(log).isLessThanOrEqualTo(before + 1e-9);
                before = log;
            }
            assertThat(before).as("a third of the air").isLessThan(-0.6);
        }
    }

    @ParameterizedTest
    @EnumSource
    void unitsOfAFamilyDiffer(Truth truth) {
        double[] crests = new double[8];
        for (int i = 0; i < crests.length; i++) {
            crests[i] = Drawn.of(truth, 4 * i).crestMm();
        }
        assertThat(Arrays.stream(crests).distinct().count()).isGreaterThan(5);
    }
}
