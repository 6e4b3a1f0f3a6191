package io.github.weirwise.internal.physics.bubbles;

/**
 * The balance f(e) = U e (1 - e)^n - jg (1 - e) + jl e = 0 of one column.
 *
 * <p>f is concave up to e = 2/(n + 1) and convex beyond, and f(0) = -jg, f(1) = jl. So Newton's method from e = 0 climbs
 * to the lower root without overshoot; if it meets a slope that no longer rises, there is no root in the concave part.
 * The convex part then holds a root only for jl &gt; 0, and Newton's method from e = 1 comes down to it.
 */
record DriftFlux(double gas, double liquid, double speed, double exponent) {
    private static final int STEPS = 80;
    /** Climbing stops when what the last step leaves, about f''/(2 f') of the step's square, is under this share. */
    private static final double STOP = 1e-12;

    double lowerRoot() {
        if (liquid == 0 && exponent == 2) {
            double rest = 1 - 4 * gas / speed;
            return rest < 0 ? Double.NaN : 2 * gas / speed / (1 + Math.sqrt(rest));
        }
        double bend = 2 / (exponent + 1);
        double e = climb(bend);
        if (e <= bend) {
            return e;
        }
        return liquid > 0 ? descend() : Double.NaN;
    }

    /** The root in the concave part, or something beyond the bend. */
    private double climb(double bend) {
        double e = 0;
        for (int step = 0; step < STEPS; step++) {
            double power = power(e);
            double excess = speed * e * (1 - e) * power - gas * (1 - e) + liquid * e;
            double slope = speed * power * (1 - (exponent + 1) * e) + gas + liquid;
            double move = excess / slope;
            if (!(slope > 0)) {
                return 1;
            }
            e -= move;
            double curvature = 0.5 * speed * exponent * power * (2 - (exponent + 1) * e) / (1 - e);
            if (e > bend || curvature * move * move <= STOP * e * slope) {
                return e;
            }
        }
        return e;
    }

    private double descend() {
        double e = 1;
        for (int step = 0; step < STEPS; step++) {
            double power = power(e);
            double excess = speed * e * (1 - e) * power - gas * (1 - e) + liquid * e;
            double move = excess / (speed * power * (1 - (exponent + 1) * e) + gas + liquid);
            e -= move;
            if (Math.abs(move) <= 1e-11 * e) {
                break;
            }
        }
        return e;
    }

    /** (1 - e)^(n - 1). */
    private double power(double e) {
        return exponent == 2 ? 1 - e : Math.pow(1 - e, exponent - 1);
    }
}
