package io.github.weirwise.lab;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/** Seeded randomness by name, so that two policies on one tank meet the same noise at the same hour. */
public final class Dice {
    private Dice() {}

    /** A generator that depends on nothing but its arguments. */
    public static SplittableRandom of(long seed, String stream, long index) {
        return new SplittableRandom(mix(mix(seed ^ (stream.hashCode() * 0x9E3779B97F4A7C15L)) + index));
    }

    /** A tank's seed; the phases "tune" and "report" never share one (64-bit streams of their own). */
    public static long tankSeed(String phase, String truth, long seed, long tank) {
        return of(mix(seed), "tank of phase " + phase + " in truth " + truth, tank)
                .nextLong();
    }

    /** Even between two limits. */
    public static double between(RandomGenerator random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** A normal deviate held within two deviations. */
    public static double near(RandomGenerator random, double mean, double deviation) {
        return mean + deviation * Math.max(-2, Math.min(2, random.nextGaussian()));
    }

    /** A factor around 1 whose logarithm is normal, held within two deviations. */
    public static double factor(RandomGenerator random, double logDeviation) {
        return Math.exp(near(random, 0, logDeviation));
    }

    private static long mix(long value) {
        long z = value + 0x9E3779B97F4A7C15L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
