package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.unit.Fouling;
import io.github.weirwise.unit.Part;
import java.util.SplittableRandom;
import org.hipparchus.filtering.kalman.Measurement;
import org.hipparchus.filtering.kalman.ProcessEstimate;
import org.hipparchus.filtering.kalman.extended.ExtendedKalmanFilter;
import org.hipparchus.filtering.kalman.extended.NonLinearEvolution;
import org.hipparchus.filtering.kalman.extended.NonLinearProcess;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposer;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Validation of the filter's mechanics against the extended Kalman filter of Hipparchus 4.0.2 (hipparchus-filtering). */
class MomentsTest {
    private static final int N = State.SIZE;
    private static final int READINGS = 40;
    private static final double MOST_DAYS = 0.3;

    /** One scalar reading after so many days. */
    private record Seen(double time, double days, double[] gradient, double value, double sd) implements Measurement {
        @Override
        public double getTime() {
            return time;
        }

        @Override
        public RealVector getValue() {
            return new ArrayRealVector(new double[] {value});
        }

        @Override
        public RealMatrix getCovariance() {
            return MatrixUtils.createRealDiagonalMatrix(new double[] {sd * sd});
        }
    }

    /** What the class comment of {@link Prior} says of some days, written down a second time as matrices. */
    private static final class Days implements NonLinearProcess<Seen> {
        @Override
        public NonLinearEvolution getEvolution(double previousTime, RealVector before, Seen seen) {
            double days = seen.days();
            RealVector state = before.copy();
            RealMatrix transition = MatrixUtils.createRealIdentityMatrix(N);
            double[] noise = new double[N];
            double keep = Math.exp(-days / Prior.PASSING_DAYS);
            state.setEntry(State.PASSING, keep * before.getEntry(State.PASSING));
            transition.setEntry(State.PASSING, State.PASSING, keep);
            noise[State.PASSING] = square(Prior.PASSING_USUAL_SD) * (1 - keep * keep);
            noise[State.FOAM] = square(Prior.FOAM_DRIFT) * days;
            noise[State.OFFSET] = square(Prior.OFFSET_DRIFT_MM) * days;
            noise[State.SLOPE] = square(Prior.SLOPE_DRIFT) * days;
            noise[State.AIR_EXPONENT] = square(Prior.AIR_EXPONENT_DRIFT) * days;
            noise[State.TONE] = square(Prior.TONE_DRIFT) * days;
            for (Part part : Part.SERVICEABLE) {
                int at = State.of(part);
                int pace = State.paceOf(part);
                double drift = Prior.weeks(part) ? Prior.PART_DRIFT : Prior.SUDDEN_DRIFT;
                noise[at] = square(drift) * days;
                double usual = days / part.fouling().daysToWorst();
                if (pace >= 0) {
                    double grown = usual * Math.exp(before.getEntry(pace));
                    state.addToEntry(at, grown);
                    transition.setEntry(at, pace, grown);
                } else if (part.fouling().kind() == Fouling.Kind.GROWS) {
                    state.addToEntry(at, usual);
                    noise[at] += square(Prior.PACE_SD * usual);
                }
            }
            RealMatrix jacobian = MatrixUtils.createRowRealMatrix(seen.gradient());
            return new NonLinearEvolution(
                    seen.time(), state, transition, MatrixUtils.createRealDiagonalMatrix(noise), jacobian);
        }

        @Override
        public RealVector getInnovation(Seen seen, NonLinearEvolution evolution, RealMatrix covariance) {
            double predicted = evolution.getCurrentState().dotProduct(new ArrayRealVector(seen.gradient()));
            return new ArrayRealVector(new double[] {seen.value() - predicted});
        }

        private static double square(double x) {
            return x * x;
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void daysAndReadingsGiveTheMeansAndCovariancesOfTheReferenceFilter(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Moments moments = start(random);
        ExtendedKalmanFilter<Seen> reference = new ExtendedKalmanFilter<>(
                new LUDecomposer(1e-12), new Days(), new ProcessEstimate(0, mean(moments), covariance(moments)));
        double time = 0;
        for (int i = 0; i < READINGS; i++) {
            Seen seen = reading(random, time);
            time = seen.time();
            take(moments, seen);
            ProcessEstimate expected = reference.estimationStep(seen);
            assertThat(mean(moments).subtract(expected.getState()).getLInfNorm())
                    .as("mean after reading %d", i)
                    .isLessThan(1e-9);
            assertThat(covariance(moments).subtract(expected.getCovariance()).getNorm1())
                    .as("covariance after reading %d", i)
                    .isLessThan(1e-9);
        }
    }

    /** No reading makes anything less certain, and half of a reading's pull lies between none and all. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void aReadingTakesFromEveryVariance(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Moments before = start(random);
        Seen seen = reading(random, 0);
        Moments sharp = before.copy();
        Moments half = before.copy();
        double[] with = new double[N];
        double total = before.project(seen.gradient(), with) + seen.sd() * seen.sd();
        sharp.update(with, total, 0, 1);
        half.update(with, total, 0, 0.5);
        for (int i = 0; i < N; i++) {
            assertThat(sharp.cov(i, i)).isLessThanOrEqualTo(before.cov(i, i));
            double middle = 0.5 * (before.cov(i, i) + sharp.cov(i, i));
            assertThat(half.cov(i, i)).isCloseTo(middle, within(1e-12));
        }
    }

    private static Moments start(SplittableRandom random) {
        Moments moments = new Moments();
        for (int i = 0; i < N; i++) {
            moments.set(i, random.nextDouble(0.05, 0.3), random.nextDouble(0.02, 0.12));
        }
        for (int i = 0; i < 10; i++) {
            take(moments, reading(random, 0));
        }
        return moments;
    }

    /** Sizes stay well under the worst that a part is taken to reach, where growth is cut off. */
    private static Seen reading(SplittableRandom random, double time) {
        double days = random.nextDouble(0.02, MOST_DAYS);
        double[] gradient = new double[N];
        double value = 0;
        for (int i = 0; i < N; i++) {
            gradient[i] = random.nextInt(3) == 0 ? random.nextDouble(-1, 1) : 0;
            value += 0.2 * gradient[i];
        }
        double sd = random.nextDouble(0.05, 0.3);
        return new Seen(time + days, days, gradient, value + sd * random.nextGaussian(), sd);
    }

    private static void take(Moments moments, Seen seen) {
        Prior.forward(moments, seen.days());
        double[] with = new double[N];
        double total = moments.project(seen.gradient(), with) + seen.sd() * seen.sd();
        moments.update(with, total, seen.value() - Moments.dot(seen.gradient(), moments.mean()), 1);
    }

    private static RealVector mean(Moments moments) {
        return new ArrayRealVector(moments.mean().clone());
    }

    private static RealMatrix covariance(Moments moments) {
        RealMatrix all = MatrixUtils.createRealMatrix(N, N);
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                all.setEntry(i, j, moments.cov(i, j));
            }
        }
        return all;
    }
}
