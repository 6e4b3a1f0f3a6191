package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Quantiles, resampling and points: the small tools that a belief is drawn with. */
class DrawingToolsTest {
    /** Standard normal quantiles as printed in any table, for example NIST/SEMATECH e-Handbook 1.3.6.7.1. */
    @Test
    void normalQuantilesAreThoseOfTheTables() {
        assertThat(NormalTable.quantile(0.5)).isCloseTo(0, within(1e-9));
        assertThat(NormalTable.quantile(0.8413447)).isCloseTo(1, within(0.001));
        assertThat(NormalTable.quantile(0.975)).isCloseTo(1.959964, within(0.001));
        assertThat(NormalTable.quantile(0.01)).isCloseTo(-2.326348, within(0.003));
        assertThat(NormalTable.quantile(0.999)).isCloseTo(3.090232, within(0.02));
    }

    @Test
    void normalQuantilesGrowAndMirrorEachOther() {
        double before = NormalTable.quantile(1e-9);
        assertThat(before).isBetween(-5.0, -3.0);
        for (double chance = 0.0005; chance < 1; chance += 0.0005) {
            double here = NormalTable.quantile(chance);
            assertThat(here).isGreaterThan(before);
            assertThat(here).isCloseTo(-NormalTable.quantile(1 - chance), within(1e-6));
            before = here;
        }
    }

    @Test
    void eachIsPickedAboutAsOftenAsItsWeightAsks() {
        List<String> from = List.of("a", "b", "c", "d");
        List<String> picked = Resampling.pick(from, new double[] {0.5, 0.25, 0, 0.25}, 100, 0.5);
        assertThat(picked).hasSize(100);
        assertThat(Collections.frequency(picked, "a")).isEqualTo(50);
        assertThat(Collections.frequency(picked, "b")).isEqualTo(25);
        assertThat(Collections.frequency(picked, "c")).isZero();
        assertThat(Collections.frequency(picked, "d")).isEqualTo(25);
    }

    @Test
    void theOffsetDecidesWhoGetsTheOddOne() {
        List<String> from = List.of("a", "b");
        double[] even = {0.5, 0.5};
        assertThat(Resampling.pick(from, even, 1, 0.1)).containsExactly("a");
        assertThat(Resampling.pick(from, even, 1, 0.9)).containsExactly("b");
        assertThat(Resampling.pick(from, even, 3, 0.1)).containsExactly("a", "a", "b");
    }

    @Test
    void roundingNeverLeavesOneOut() {
        assertThat(Resampling.pick(List.of("a", "b"), new double[] {0.3, 0.3}, 10, 0.5))
                .hasSize(10);
    }

    @Test
    void quantilesAreWeighted() {
        List<Possibility> possibilities = IntStream.range(0, 4)
                .mapToObj(i -> weighing(i == 3 ? 0.7 : 0.1))
                .toList();
        WeightedSpread spread = WeightedSpread.of(possibilities, i -> new double[] {30, 10, 20, 40}[i], i -> true);
        assertThat(spread.quantile(0.05)).isEqualTo(10);
        assertThat(spread.quantile(0.15)).isEqualTo(20);
        assertThat(spread.quantile(0.25)).isEqualTo(30);
        assertThat(spread.quantile(0.5)).isEqualTo(40);
        assertThat(spread.range(0.15, 0.99).low()).isEqualTo(20);
        assertThat(spread.range(0.15, 0.99).high()).isEqualTo(40);
    }

    @Test
    void onlyWhatIsCountedCounts() {
        List<Possibility> possibilities =
                IntStream.range(0, 4).mapToObj(i -> weighing(0.25)).toList();
        WeightedSpread odd = WeightedSpread.of(possibilities, i -> i, i -> i % 2 == 1);
        assertThat(odd.quantile(0.2)).isEqualTo(1);
        assertThat(odd.quantile(0.9)).isEqualTo(3);
        assertThat(WeightedSpread.of(possibilities, i -> i, i -> false).quantile(0.5))
                .isZero();
    }

    @Test
    void pointsLieInsideTheCubeFillItEvenlyAndComeFromTheSeed() {
        Draw draw = new Draw(new SplittableRandom(5));
        Draw same = new Draw(new SplittableRandom(5));
        double[] mean = new double[Draw.DIMENSIONS];
        for (int i = 0; i < 1024; i++) {
            double[] point = draw.next();
            assertThat(same.next()).isEqualTo(point);
            for (int k = 0; k < mean.length; k++) {
                assertThat(point[k]).isGreaterThan(0).isLessThan(1);
                mean[k] += point[k] / 1024;
            }
        }
        for (double each : mean) {
            assertThat(each).isCloseTo(0.5, within(0.02));
        }
        assertThat(new Draw(new SplittableRandom(6)).next()).isNotEqualTo(new Draw(new SplittableRandom(5)).next());
    }

    private static Possibility weighing(double weight) {
        return new Possibility(null, null, CauseCourse.NONE, CauseCourse.NONE, null, weight);
    }
}
