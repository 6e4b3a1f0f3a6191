package io.github.weirwise.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;

/**
 * Weighted members that stand for a belief. Where the readings leave few of the first draws standing, the weight is let in
 * by degrees, and between the degrees the members are resampled and moved by Metropolis steps in the cube (a sequential
 * Monte Carlo sampler; Del Moral, Doucet and Jasra 2006), so that the answer rests on many.
 */
final class Ensemble {
    private static final double ENOUGH = 90;
    private static final int MOVED = 180;
    private static final int MOVES = 2;
    private static final int MOST_DEGREES = 5;
    private static final double LEAST_STRIDE = 0.01;
    private static final double STRIDE = 0.5;
    /** Share of moves that try another cause. */
    private static final double OTHER_CAUSE = 0.2;
    /** Coordinates that pick the main cause, its size and its onset. */
    private static final int CAUSE_COORDINATES = 3;

    private final Function<double[], Member> maker;
    private final SplittableRandom random;
    private List<Member> members;
    private double[] weights;

    Ensemble(Function<double[], Member> maker, SplittableRandom random, int count) {
        this.maker = maker;
        this.random = random;
        Draw draw = new Draw(random);
        members = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            members.add(maker.apply(draw.next()));
        }
        weights = weightsFor(1);
        if (effectiveCount(weights) < ENOUGH) {
            byDegrees();
        }
    }

    List<Member> members() {
        return members;
    }

    double[] weights() {
        return weights;
    }

    private void byDegrees() {
        double done = 0;
        for (int degree = 1; done < 1; degree++) {
            double step = degree == MOST_DEGREES ? 1 - done : step(1 - done);
            members = Resampling.pick(members, weightsFor(step), Math.min(MOVED, members.size()), random.nextDouble());
            done = Math.min(1, done + step);
            if (1 - done < 1e-6) {
                done = 1;
            }
            double[] strides = strides();
            for (int move = 0; move < MOVES; move++) {
                moveAll(done, strides);
            }
        }
        weights = new double[members.size()];
        java.util.Arrays.fill(weights, 1.0 / weights.length);
    }

    /** The greatest share of the log weight, up to {@code most}, that leaves enough members standing. */
    private double step(double most) {
        if (effectiveCount(weightsFor(most)) >= ENOUGH) {
            return most;
        }
        double low = 0;
        double high = most;
        for (int i = 0; i < 20; i++) {
            double middle = 0.5 * (low + high);
            if (effectiveCount(weightsFor(middle)) >= ENOUGH) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.max(low, 1e-3);
    }

    private double[] weightsFor(double power) {
        double most = Double.NEGATIVE_INFINITY;
        for (Member member : members) {
            most = Math.max(most, member.log());
        }
        double[] result = new double[members.size()];
        double sum = 0;
        for (int i = 0; i < result.length; i++) {
            result[i] = Math.exp(power * (members.get(i).log() - most));
            sum += result[i];
        }
        for (int i = 0; i < result.length; i++) {
            result[i] /= sum;
        }
        return result;
    }

    static double effectiveCount(double[] weights) {
        double squares = 0;
        for (double weight : weights) {
            squares += weight * weight;
        }
        return 1 / squares;
    }

    private double[] strides() {
        double[] strides = new double[Draw.DIMENSIONS];
        for (int d = 0; d < strides.length; d++) {
            double sum = 0;
            double squares = 0;
            for (Member member : members) {
                sum += member.point()[d];
                squares += member.point()[d] * member.point()[d];
            }
            double mean = sum / members.size();
            double spread = Math.sqrt(Math.max(0, squares / members.size() - mean * mean));
            strides[d] = Math.max(LEAST_STRIDE, STRIDE * spread);
        }
        return strides;
    }

    private void moveAll(double power, double[] strides) {
        for (int i = 0; i < members.size(); i++) {
            Member here = members.get(i);
            Member there = maker.apply(proposal(here.point(), strides));
            if (Math.log(random.nextDouble()) < power * (there.log() - here.log())) {
                members.set(i, there);
            }
        }
    }

    private double[] proposal(double[] from, double[] strides) {
        double[] point = from.clone();
        boolean otherCause = random.nextDouble() < OTHER_CAUSE;
        for (int d = 0; d < point.length; d++) {
            if (d < CAUSE_COORDINATES && otherCause) {
                point[d] = Draw.inside(random.nextDouble());
            } else if (d > 0 && random.nextDouble() < 0.6) {
                point[d] = reflected(point[d] + strides[d] * random.nextGaussian());
            }
        }
        return point;
    }

    private static double reflected(double value) {
        double folded = Math.abs(value) % 2;
        return Draw.inside(folded > 1 ? 2 - folded : folded);
    }
}
