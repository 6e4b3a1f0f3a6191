package io.github.weirwise.diagnosis;

import java.util.SplittableRandom;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Quasi-random points of the unit cube (Sobol), shifted by a seeded amount (Cranley and Patterson 1976); the same seed
 * gives the same points.
 */
final class Draw {
    static final int DIMENSIONS = 18;

    private static final double EDGE = 1e-9;

    private final SobolSequenceGenerator sequence = new SobolSequenceGenerator(DIMENSIONS);
    private final double[] shift = new double[DIMENSIONS];

    Draw(SplittableRandom random) {
        for (int i = 0; i < DIMENSIONS; i++) {
            shift[i] = random.nextDouble();
        }
        sequence.skipTo(32);
    }

    /** The next point, every coordinate above 0 and below 1. */
    double[] next() {
        double[] point = sequence.nextVector();
        for (int i = 0; i < DIMENSIONS; i++) {
            double value = point[i] + shift[i];
            point[i] = inside(value - Math.floor(value));
        }
        return point;
    }

    static double inside(double value) {
        return Math.min(1 - EDGE, Math.max(EDGE, value));
    }
}
