package io.github.weirwise.internal.physics.hydraulics;

/**
 * Upstream head (m) of a weir drowned by Villemonte's rule, for one discharge and one downstream head above the crest.
 *
 * <p>Solves (Q1(h1)/Q)^(1/0.385) (1 - (h2/h1)^1.5) = 1 rather than Q1(h1) (1 - (h2/h1)^1.5)^0.385 = Q: the small exponent
 * gives the second form an infinite slope at h1 = h2, the first rises smoothly from zero.
 */
record DrownedWeir(RectangularWeir weir, double discharge, double downstream) {
    static final double VILLEMONTE = 0.385;

    /** Newton's method kept inside a bracket, so that it cannot leave the only root. */
    double upstreamHead(double freeHead) {
        double low = Math.max(freeHead, downstream);
        double high = 1.5 * low + freeHead;
        while (excess(high) < 0) {
            low = high;
            high *= 2;
        }
        double h = low + 0.25 * (high - low);
        for (int step = 0; step < 100 && high - low > 1e-13 * high; step++) {
            double value = excess(h);
            if (value < 0) {
                low = h;
            } else {
                high = h;
            }
            double next = h - value / slope(h, value);
            // What such a step leaves is about its square, a rounding error.
            if (Math.abs(next - h) <= 1e-8 * h) {
                return next;
            }
            h = next > low && next < high ? next : 0.5 * (low + high);
        }
        return h;
    }

    private double excess(double h) {
        return Math.pow(weir.freeDischarge(h) / discharge, 1 / VILLEMONTE) * base(h, downstream) - 1;
    }

    private double slope(double h, double excess) {
        double base = Math.max(base(h, downstream), 1e-12);
        return (excess + 1) * (weir.freeSlope(h) / VILLEMONTE + 1.5 * (1 - base) / (h * base));
    }

    /** 1 - (h2/h1)^1.5, not below zero. */
    static double base(double upstream, double downstream) {
        double ratio = downstream / upstream;
        return Math.max(0, 1 - ratio * Math.sqrt(ratio));
    }
}
