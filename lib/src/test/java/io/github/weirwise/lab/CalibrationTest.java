package io.github.weirwise.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.report.Range;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CalibrationTest {
    private static Calibration of(double stated, double share, int count) {
        return new Calibration(IntStream.range(0, count)
                .mapToObj(i -> new Calibration.Pair(stated, i < share * count))
                .toList());
    }

    @Test
    void statedAsItComesHasNoError() {
        SplittableRandom dice = new SplittableRandom(1);
        List<Calibration.Pair> pairs = IntStream.range(0, 20000)
                .mapToObj(i -> {
                    double chance = dice.nextDouble();
                    return new Calibration.Pair(chance, dice.nextDouble() < chance);
                })
                .toList();
        assertThat(new Calibration(pairs).expectedError()).isLessThan(0.015);
    }

    @Test
    void allToldAt90ButHalfComesIsOffByForty() {
        assertThat(of(0.9, 0.5, 2000).baseRate()).isCloseTo(0.5, within(1e-9));
        SplittableRandom dice = new SplittableRandom(2);
        List<Calibration.Pair> pairs = IntStream.range(0, 20000)
                .mapToObj(i -> new Calibration.Pair(0.9, dice.nextBoolean()))
                .toList();
        assertThat(new Calibration(pairs).expectedError()).isCloseTo(0.4, within(0.02));
    }

    @Test
    void binsHoldEqualCounts() {
        Calibration calibration = new Calibration(IntStream.range(0, 105)
                .mapToObj(i -> new Calibration.Pair(i / 105.0, true))
                .toList());
        assertThat(calibration.bins()).hasSize(10).allMatch(bin -> bin.count() == 10 || bin.count() == 11);
    }

    @Test
    void theIntervalOfAMeanHoldsItAndShrinksWithTheRootOfTheCount() {
        SplittableRandom dice = new SplittableRandom(3);
        double[] few = dice.doubles(100).toArray();
        double[] many = dice.doubles(10000).toArray();
        Range wide = Bootstrap.of(few);
        Range narrow = Bootstrap.of(many);
        assertThat(narrow.contains(0.5)).isTrue();
        assertThat(wide.width() / narrow.width()).isBetween(7.0, 13.0);
    }

    @Test
    void theLogScoreRewardsARightNarrowRangeAndPunishesAWrongOne() {
        double narrow = Tally.logDensity(0, 0, 0.2);
        assertThat(narrow).isGreaterThan(Tally.logDensity(0, 0, 1));
        assertThat(Tally.logDensity(2, 0, 0.2)).isLessThan(Tally.logDensity(2, 0, 1));
        // A normal of deviation 0.2 at its mean has density 1.9947; 2 % goes to the even spread over nine.
        assertThat(narrow).isCloseTo(Math.log(0.98 * 1.99471140 + 0.02 / 9), within(1e-6));
    }
}
