package io.github.weirwise.trial;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/** Seeded randomness by name, so that two policies on one tank meet the same noise at the same hour. */
final class Dice {
    private Dice() {}

    /** A generator that depends on nothing but its arguments. */
    static SplittableRandom of(long seed, String stream, long index) {
        return new SplittableRandom(mix(mix(seed ^ (stream.hashCode() * 0x9E3779B97F4A7C15L)) + index));
    }

    /** A tank's seed; tuning and reporting tanks never share one. */
    static long tankSeed(String phase, long seed, long tank) {
        return of(seed, "tank of phase " + phase, tank).nextLong();
    }

    static double between(RandomGenerator random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    static double normal(RandomGenerator random, double mean, double deviation) {
        return mean + deviation * random.nextGaussian();
    }

    /** A normal deviate held within a number of deviations. */
    static double normalWithin(RandomGenerator random, double mean, double deviation, double most) {
        double z = random.nextGaussian();
        return mean + deviation * Math.max(-most, Math.min(most, z));
    }

    /** A factor around 1 whose logarithm is normal, held within 2.5 deviations. */
    static double factor(RandomGenerator random, double logDeviation) {
        return Math.exp(normalWithin(random, 0, logDeviation, 2.5));
    }

    private static long mix(long value) {
        long z = value + 0x9E3779B97F4A7C15L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
