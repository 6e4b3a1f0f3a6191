package io.github.weirwise.practice;

import java.util.SplittableRandom;

/** Random numbers of a reading, the same for the same seed, look and minute whatever was done before. */
final class Dice {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private Dice() {}

    static SplittableRandom of(int seed, int stream, double hours) {
        long minute = Math.round(hours * 60);
        return new SplittableRandom(mix(mix(seed * GOLDEN + stream) + minute * GOLDEN));
    }

    private static long mix(long z) {
        long x = (z ^ z >>> 30) * 0xBF58476D1CE4E5B9L;
        x = (x ^ x >>> 27) * 0x94D049BB133111EBL;
        return x ^ x >>> 31;
    }
}
