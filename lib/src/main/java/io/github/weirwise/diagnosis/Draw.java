package io.github.weirwise.diagnosis;

import org.hipparchus.random.SobolSequenceGenerator;
import org.hipparchus.special.Erf;

/**
 * Quasi-random points of the unit cube, shifted by a seeded amount (Cranley and Patterson 1976), read coordinate by
 * coordinate; the same seed gives the same points.
 */
final class Draw {
    static final int DIMENSIONS = 16;

    private final SobolSequenceGenerator sequence = new SobolSequenceGenerator(DIMENSIONS);
    private final double[] shift = new double[DIMENSIONS];
    private double[] point = new double[DIMENSIONS];
    private int coordinate;

    Draw(long seed) {
        java.util.SplittableRandom random = new java.util.SplittableRandom(seed);
        for (int i = 0; i < DIMENSIONS; i++) {
            shift[i] = random.nextDouble();
        }
        sequence.skipTo(32);
    }

    /** Moves to the next point. */
    void next() {
        point = sequence.nextVector();
        coordinate = 0;
    }

    /** The next coordinate, above 0 and below 1. */
    double uniform() {
        double value = point[coordinate] + shift[coordinate];
        coordinate++;
        value -= Math.floor(value);
        return Math.min(1 - 1e-9, Math.max(1e-9, value));
    }

    /** The next coordinate as a standard normal number. */
    double normal() {
        return Math.sqrt(2) * Erf.erfInv(2 * uniform() - 1);
    }
}
