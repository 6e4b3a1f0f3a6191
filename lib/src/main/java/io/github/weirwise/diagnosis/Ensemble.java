package io.github.weirwise.diagnosis;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Weighted members that stand for a belief. Where the readings leave few of the first draws standing, the weight is let in
 * by degrees, and after each degree some members are resampled and walk by Metropolis steps in the cube; every stop of every
 * walk is kept (a sequential Monte Carlo sampler, Del Moral, Doucet and Jasra 2006, in its waste-free form, Dau and Chopin
 * 2022), so that the answer rests on many.
 */
final class Ensemble {
    /** Share of the possibilities asked for that are drawn first. */
    private static final double FIRST = 0.57;
    /** A draw whose logarithm of the weight lies so far below the best is given up. */
    private static final double HOPELESS = 40;
    /** So many members must stand, as a share of those drawn first. */
    private static final double ENOUGH = 0.2;
    /** Chains, as a share of the possibilities asked for, and how many stops each makes. */
    private static final double CHAINS = 0.086;

    private static final int STOPS = 8;
    private static final int MOST_DEGREES = 5;
    /** With fewer members of one cause, all members say how far to step. */
    private static final int ENOUGH_KIN = 6;
    /** How many members say how far to step. */
    private static final int SURVEYED = 160;

    private static final double LEAST_STRIDE = 0.01;
    private static final double STRIDE = 1;
    /** Share of steps that try another cause with the same size and onset. */
    private static final double OTHER_CAUSE = 0.3;
    /** Share of steps that try another cause with another size, onset and growth. */
    private static final double OTHER_COURSE = 0.1;
    /** Share of coordinates that a step changes. */
    private static final double CHANGED = 0.3;
    /** Coordinates that pick the main cause, its size, its onset and its growth. */
    private static final int CAUSE_COORDINATES = 4;

    private final Maker maker;
    private final SplittableRandom random;
    private final double enough;
    private final int chains;
    private List<Member> members;
    private double[] weights;

    /** Makes members. */
    @FunctionalInterface
    interface Maker {
        /** The member at a point of the cube, or null when its logarithm of the weight is below {@code leastLog}. */
        Member at(double[] point, double leastLog);
    }

    Ensemble(Maker maker, SplittableRandom random, int count) {
        this.maker = maker;
        this.random = random;
        int first = (int) (FIRST * count);
        this.enough = ENOUGH * first;
        this.chains = (int) Math.ceil(CHAINS * count);
        Draw draw = new Draw(random);
        members = new ArrayList<>(first);
        double best = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < first; i++) {
            Member member = maker.at(draw.next(), best - HOPELESS);
            if (member != null) {
                members.add(member);
                best = Math.max(best, member.log());
            }
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
            double[] share = weightsFor(step);
            Map<Cause, double[]> strides =
                    stridesByCause(Resampling.pick(members, share, SURVEYED, random.nextDouble()));
            List<Member> starts = Resampling.pick(members, share, chains, random.nextDouble());
            done = Math.min(1, done + step);
            if (1 - done < 1e-6) {
                done = 1;
            }
            members = new ArrayList<>();
            for (Member start : starts) {
                chain(start, done, strides);
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
    private static Map<Cause, double[]> stridesByCause(List<Member> members) {
        Map<Cause, List<Member>> kin = new EnumMap<>(Cause.class);
        for (Member member : members) {
            kin.computeIfAbsent(member.possibility().cause(), cause -> new ArrayList<>())
                    .add(member);
        }
        double[] common = strides(members);
        Map<Cause, double[]> strides = new EnumMap<>(Cause.class);
        for (Cause cause : Cause.values()) {
            List<Member> some = kin.getOrDefault(cause, List.of());
            strides.put(cause, some.size() >= ENOUGH_KIN ? strides(some) : common);
        }
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

    /** Walks from a member by Metropolis steps; every stop is kept. */
    private void chain(Member start, double power, Map<Cause, double[]> strides) {
        Member here = start;
        members.add(here);
        for (int i = 1; i < STOPS; i++) {
            double[] point =
                    proposal(here.point(), strides.get(here.possibility().cause()));
            // The dice are thrown first, so that a bad proposal need not be weighed to its end.
            double least = here.log() + Math.log(random.nextDouble()) / power;
            Member there = maker.at(point, least);
            if (there != null) {
                here = there;
            }
            members.add(here);
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
