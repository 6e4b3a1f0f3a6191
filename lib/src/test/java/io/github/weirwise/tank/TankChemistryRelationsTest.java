package io.github.weirwise.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.report.OutOfRangeException;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Relations that hold for any water, over seeded random ones. */
class TankChemistryRelationsTest {
    private static final int WATERS = 20_000;

    private final Random random = new Random(42);

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    @Test
    void moreAmmoniaIsUnionisedInWarmerAndMoreAlkalineWater() {
        for (int i = 0; i < WATERS; i++) {
            double pH = between(6, 9);
            double salinity = between(0, 40);
            double celsius = between(0, 38);
            double share = Ammonia.unionisedFraction(pH, salinity, celsius);
            assertThat(share).isBetween(0.0, 1.0);
            assertThat(Ammonia.unionisedFraction(pH + 0.1, salinity, celsius)).isGreaterThan(share);
            assertThat(Ammonia.unionisedFraction(pH, salinity, celsius + 1)).isGreaterThan(share);
        }
    }

    @Test
    void anNbsReadingTakenForTheTotalScaleOverstatesTheToxicPart() {
        double wrong = Ammonia.unionisedFraction(8.2, 35, 25);
        double right = Ammonia.unionisedFraction(PhScale.totalFromNbs(8.2), 35, 25);
        assertThat(wrong / right).isBetween(1.25, 1.35);
    }

    @Test
    void dryAirAndWarmWaterTakeMoreAndSaltTakesLess() {
        for (int i = 0; i < WATERS; i++) {
            double water = between(18, 32);
            double air = between(15, 30);
            double humidity = between(0, 0.9);
            double loss = Evaporation.ashraeKgPerM2Day(water, 35, air, humidity, 0, 1);
            assertThat(loss).isNotNegative();
            assertThat(Evaporation.ashraeKgPerM2Day(water + 1, 35, air, humidity, 0, 1))
                    .isGreaterThanOrEqualTo(loss);
            assertThat(Evaporation.ashraeKgPerM2Day(water, 35, air, humidity + 0.05, 0, 1))
                    .isLessThanOrEqualTo(loss);
            assertThat(Evaporation.ashraeKgPerM2Day(water, 0, air, humidity, 0, 1))
                    .isGreaterThanOrEqualTo(loss);
        }
    }

    @Test
    void arealRatesRiseToSaturationWithoutAJump() {
        for (int i = 0; i < WATERS; i++) {
            double saturated = between(0.05, 1);
            double crossover = between(0.2, 5);
            double concentration = between(0, 10);
            double rate = Nitrification.arealRate(concentration, saturated, crossover, 0.22);
            double next = Nitrification.arealRate(concentration + 1e-6, saturated, crossover, 0.22);
            assertThat(rate).isBetween(0.0, saturated);
            assertThat(next - rate).isBetween(0.0, 1e-5);
        }
    }

    @Test
    void mixingConservesSalt() {
        for (int i = 0; i < WATERS; i++) {
            double s1 = between(0, 40);
            double m1 = between(10, 1000);
            double s2 = between(0, 40);
            double m2 = between(0, 500);
            double mixed = SaltBalance.afterMixing(s1, m1, s2, m2);
            assertThat(mixed * (m1 + m2)).isCloseTo(s1 * m1 + s2 * m2, within(1e-8 * (1 + s1 * m1 + s2 * m2)));
            assertThat(mixed).isBetween(Math.min(s1, s2) - 1e-12, Math.max(s1, s2) + 1e-12);
        }
    }

    @Test
    void theNitrogenOfFeedIsAllAccountedFor() {
        assertThat(FeedWaste.AMMONIA_SHARE + FeedWaste.RETAINED_SHARE + FeedWaste.ORGANIC_SHARE)
                .isCloseTo(1, within(1e-15));
        assertThat(FeedWaste.ORGANIC_SHARE).isPositive();
    }

    @Test
    void anErrorNamesTheValueTheLimitAndWhatToTry() {
        assertThatThrownBy(() -> Ammonia.unionisedFraction(8, 45, 25))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("practicalSalinity is 45, ")
                .hasMessageContaining("to 40;");
        assertThatThrownBy(() -> Evaporation.ashraeKgPerM2Day(25, 35, 22, 1.2, 0, 1))
                .hasMessageContaining("relativeHumidity");
        assertThatThrownBy(() -> TankParameters.DEFAULT.with(TankParameter.PH_TOTAL, 3))
                .hasMessageContaining("PH_TOTAL is 3, must be 7 to 8.6");
    }

    @Test
    void eachParameterDefaultsInsideItsLimitsAndSaysWhereItIsFrom() {
        for (TankParameter parameter : TankParameter.values()) {
            assertThat(parameter.byDefault())
                    .as(parameter.name())
                    .isBetween(parameter.limit().low(), parameter.limit().high());
            assertThat(parameter.source()).as(parameter.name()).isNotBlank();
        }
    }

    @Test
    void mealsComeAtTheirHoursAndWeekendsCount() {
        Feeding feeding = new Feeding(6, 2);
        assertThat(feeding.nextMealAfter(0)).isEqualTo(9);
        assertThat(feeding.nextMealAfter(9)).isEqualTo(15);
        assertThat(feeding.nextMealAfter(15)).isEqualTo(33);
        assertThat(feeding.mealGrams(9)).isEqualTo(3);
        assertThat(feeding.mealGrams(24 * 5 + 9)).isEqualTo(6);
        assertThat(feeding.mealGrams(24 * 7 + 9)).isEqualTo(3);
    }
}
