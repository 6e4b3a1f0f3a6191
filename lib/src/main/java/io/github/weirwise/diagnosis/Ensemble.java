package io.github.weirwise.diagnosis;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Function;

/**
 * Weighted members that stand for a belief. Where the readings leave few of the first draws standing, the weight is let in
 * by degrees, and between the degrees the members are resampled and moved by Metropolis steps in the cube (a sequential
 * Monte Carlo sampler; Del Moral, Doucet and Jasra 2006), so that the answer rests on many.
 */
final class Ensemble {
    /** So many members must stand, as a share of the first draws. */
    private static final double ENOUGH = 0.13;
    /** So many are kept and moved, as a share of the first draws. */
    private static final double MOVED = 0.26;

    private static final int ENOUGH_KIN = 6;
    private static final int MOVES = 2;
    private static final int MOST_DEGREES = 5;
    private static final double LEAST_STRIDE = 0.01;
    private static final double STRIDE = 0.5;
    /** Share of moves that try another cause with the same size and onset. */
    private static final double OTHER_CAUSE = 0.25;
    /** Share of moves that try another cause with another size, onset and growth. */
    private static final double OTHER_COURSE = 0.1;
    /** Share of coordinates that a move changes. */
    private static final double CHANGED = 0.45;
    /** Coordinates that pick the main cause, its size, its onset and its growth. */
    private static final int CAUSE_COORDINATES = 4;

    private final Function<double[], Member> maker;
    private final SplittableRandom random;
    private final double enough;
    private final int moved;
    private List<Member> members;
    private double[] weights;

    Ensemble(Function<double[], Member> maker, SplittableRandom random, int count) {
        this.maker = maker;
        this.random = random;
        this.enough = ENOUGH * count;
        this.moved = (int) (MOVED * count);
        Draw draw = new Draw(random);
        members = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            members.add(maker.apply(draw.next()));
        }
        weights = weightsFor(1);
        if (effectiveCount(weights) < enough) {
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
            members = Resampling.pick(members, weightsFor(step), Math.min(moved, members.size()), random.nextDouble());
            done = Math.min(1, done + step);
            if (1 - done < 1e-6) {
                done = 1;
            }
            Map<Cause, double[]> strides = strides();
            for (int move = 0; move < MOVES; move++) {
                moveAll(done, strides);
            }
        }
        weights = new double[members.size()];
        java.util.Arrays.fill(weights, 1.0 / weights.length);
    }

    /** The greatest share of the log weight, up to {@code most}, that leaves enough members standing. */
    private double step(double most) {
        if (effectiveCount(weightsFor(most)) >= enough) {
            return most;
        }
        double low = 0;
        double high = most;
        for (int i = 0; i < 20; i++) {
            double middle = 0.5 * (low + high);
            if (effectiveCount(weightsFor(middle)) >= enough) {
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

    /** Strides by main cause: members with one cause lie much closer together than all do. */
    private Map<Cause, double[]> strides() {
        Map<Cause, List<Member>> kin = new EnumMap<>(Cause.class);
        for (Member member : members) {
            kin.computeIfAbsent(member.possibility().cause(), cause -> new ArrayList<>())
                    .add(member);
        }
        Map<Cause, double[]> strides = new EnumMap<>(Cause.class);
        kin.forEach((cause, some) -> strides.put(cause, strides(some.size() >= ENOUGH_KIN ? some : members)));
        return strides;
    }

    private static double[] strides(List<Member> some) {
        double[] strides = new double[Draw.DIMENSIONS];
        for (int d = 0; d < strides.length; d++) {
            double sum = 0;
            double squares = 0;
            for (Member member : some) {
                sum += member.point()[d];
                squares += member.point()[d] * member.point()[d];
            }
            double mean = sum / some.size();
            double spread = Math.sqrt(Math.max(0, squares / some.size() - mean * mean));
            strides[d] = Math.max(LEAST_STRIDE, STRIDE * spread);
        }
        return strides;
    }

    private void moveAll(double power, Map<Cause, double[]> strides) {
        for (int i = 0; i < members.size(); i++) {
            Member here = members.get(i);
            double[] stride = strides.get(here.possibility().cause());
            // A member that has just changed its cause waits for its new kin's strides until the next degree.
            if (stride == null) {
                continue;
            }
            Member there = maker.apply(proposal(here.point(), stride));
            if (Math.log(random.nextDouble()) < power * (there.log() - here.log())) {
                members.set(i, there);
            }
        }
    }

    private double[] proposal(double[] from, double[] strides) {
        double[] point = from.clone();
        double way = random.nextDouble();
        int redrawn = way < OTHER_CAUSE ? 1 : way < OTHER_CAUSE + OTHER_COURSE ? CAUSE_COORDINATES : 0;
        for (int d = 0; d < point.length; d++) {
            if (d < redrawn) {
                point[d] = Draw.inside(random.nextDouble());
            } else if (d > 0 && random.nextDouble() < CHANGED) {
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
