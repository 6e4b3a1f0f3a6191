package io.github.weirwise.internal.physics.bubbles;

/** Reynolds number of a falling or rising sphere from its Best number CD Re^2, both without unit. */
final class SphereDrag {
    private SphereDrag() {}

    /**
     * Root of a Re (1 + 0.15 Re^0.687) = Best number. The left side is convex, so Newton's method from above comes down
     * to the root without overshoot.
     */
    static double reynolds(double best, double a) {
        double re = Math.min(best / a, Math.pow(best / (0.15 * a), 1 / 1.687));
        for (int step = 0; step < 30; step++) {
            double growth = 0.15 * Math.pow(re, 0.687);
            double move = (a * re * (1 + growth) - best) / (a * (1 + 1.687 * growth));
            re -= move;
            if (Math.abs(move) <= 1e-10 * re) {
                break;
            }
        }
        return re;
    }
}
