package io.github.weirwise.internal.physics.foam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BiFunction;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Laws of lives against a published decay: the height of a beer froth, 15 points, Leike 2002, Eur. J. Phys. 23:21-26. Standing foam is
 * no rising foam, and beer no sea water: what is held is that the laws have a shape that foams have.
 */
class PublishedDecayTest {
    /** The least error that is stated for a height. */
    private static final double LEAST_ERROR_CM = 0.2;

    private static final double GREATEST_ERROR_CM = 0.6;
    private static final List<double[]> FROTH = froth();

    /** @param missCm root of the mean square miss */
    private record Fit(double first, double second, double missCm, double worstCm) {}

    private static List<double[]> froth() {
        try (InputStream in = PublishedDecayTest.class.getResourceAsStream("leike-2002-beer-froth.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(2)
                    .map(line -> line.split(","))
                    .map(cells -> new double[] {Double.parseDouble(cells[0]), Double.parseDouble(cells[1])})
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Fit of(double first, double second, DoubleUnaryOperator survival) {
        double squares = 0;
        double worst = 0;
        for (double[] point : FROTH) {
            double miss = point[1] - FROTH.get(0)[1] * survival.applyAsDouble(point[0]);
            squares += miss * miss;
            worst = Math.max(worst, Math.abs(miss));
        }
        return new Fit(first, second, Math.sqrt(squares / FROTH.size()), worst);
    }

    /** The best mean life for each shape, by shrinking steps. */
    private static Fit best(double lowShape, double highShape, BiFunction<Double, Double, Fit> law) {
        Fit best = law.apply(300.0, lowShape);
        for (double width = 1; width > 1e-4; width *= 0.7) {
            Fit centre = best;
            for (int i = -5; i <= 5; i++) {
                for (int j = -5; j <= 5; j++) {
                    double life = centre.first() * Math.exp(width * i / 5);
                    double shape = centre.second() + width * (highShape - lowShape) * j / 5;
                    Fit fit = law.apply(life, Math.max(lowShape, Math.min(highShape, shape)));
                    best = fit.missCm() < best.missCm() ? fit : best;
                }
            }
        }
        return best;
    }

    private static Fit power(double life, double alpha) {
        return of(life, alpha, new FoamLife(life, alpha)::survival);
    }

    private static Fit weibull(double life, double shape) {
        return of(life, shape, new WeibullLife(life, shape)::survival);
    }

    @Test
    void powerAndWeibullFollowTheFrothWithinItsLeastError() {
        Fit power = best(1.05, 6, PublishedDecayTest::power);
        Fit weibull = best(0.5, 1.5, PublishedDecayTest::weibull);
        assertThat(power.missCm()).isCloseTo(0.113, within(0.005));
        assertThat(weibull.missCm()).isCloseTo(0.116, within(0.005));
        assertThat(power.second()).isCloseTo(1.87, within(0.1));
        assertThat(weibull.second()).isCloseTo(0.865, within(0.02));
        assertThat(List.of(power, weibull)).allMatch(fit -> fit.missCm() < LEAST_ERROR_CM);
    }

    /** The miss is shown: one life for all bubbles, and the spread of lives that units have, both follow it less well. */
    @Test
    void anExponentialLawAndTheUnitsOwnSpreadMissMore() {
        Fit exponential = best(1, 1.0001, PublishedDecayTest::weibull);
        Fit units = best(1.2, 1.2001, PublishedDecayTest::power);
        assertThat(exponential.missCm()).isCloseTo(0.376, within(0.01));
        assertThat(exponential.worstCm()).isLessThan(GREATEST_ERROR_CM);
        assertThat(units.missCm()).isCloseTo(0.202, within(0.01));
        assertThat(units.worstCm()).isCloseTo(0.604, within(0.02));
    }

    @Test
    void weibullsShareIsItsSurvivalAtTheAgeOfTheLip() {
        SplittableRandom random = new SplittableRandom(6);
        for (int i = 0; i < 300; i++) {
            WeibullLife life = new WeibullLife(random.nextDouble(5, 60), random.nextDouble(0.7, 1.5));
            double age = life.tauS() * random.nextDouble(0, 2);
            double volume = integral(life, age);
            assertThat(life.survivingShare(1, volume)).isCloseTo(life.survival(age), within(2e-4));
        }
        assertThat(new WeibullLife(20, 1).survivingShare(1, 10)).isCloseTo(0.5, within(1e-9));
        assertThat(new WeibullLife(20, 1.3).survivingShare(1, 20)).isZero();
    }

    private static double integral(WeibullLife life, double age) {
        int steps = 4000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            sum += life.survival((i + 0.5) * age / steps) * age / steps;
        }
        return sum;
    }

    /** A fiftieth of the gas gets to the lip, as on target: the wider the lives are spread, the gentler the answer to air. */
    @Test
    void widerLawsAnswerToAirMoreGently() {
        DoubleBinaryOperator weibull = (shape, volume) -> new WeibullLife(24, shape).survivingShare(1, volume);
        DoubleBinaryOperator power = (alpha, volume) -> new FoamLife(24, alpha).survivingShare(1, volume);
        assertThat(exponent(power, 1.2)).isCloseTo(5.5, within(0.1));
        assertThat(exponent(power, 2)).isCloseTo(12.1, within(0.2));
        assertThat(exponent(weibull, 0.7)).isBetween(10.0, exponent(weibull, 1));
        assertThat(exponent(weibull, 1)).isCloseTo(49, within(0.5));
        assertThat(exponent(weibull, 1.5)).isGreaterThan(exponent(weibull, 1));
    }

    /** Logarithm of the share by that of the air, where the share is a fiftieth; a share hangs on volume over air. */
    private static double exponent(DoubleBinaryOperator law, double shape) {
        double low = 0;
        double high = 24;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            if (law.applyAsDouble(shape, middle) > 0.02) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double more = law.applyAsDouble(shape, low / 1.0005);
        double less = law.applyAsDouble(shape, low * 1.0005);
        return Math.log(more / less) / Math.log(1.0005 * 1.0005);
    }
}
