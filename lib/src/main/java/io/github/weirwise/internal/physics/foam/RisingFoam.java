package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;

/**
 * Liquid fraction of a foam that rises steadily, from its gas flux (m/s) and drainage speed K (m/s):
 * Stevenson 2007, Minerals Engineering 20:282.
 *
 * <p>A column delivers the greatest liquid flux that its foam can pass, j* = max over eps of jg eps/(1 - eps) - K eps^n,
 * which lies where eps^(n-1) (1 - eps)^2 = jg/(n K). Beyond jg = n K ((n - 1)/(n + 1))^(n - 1) (2/(n + 1))^2 (8 K/27 for n = 2) there is no
 * such maximum: the foam is flooded, a wet froth. Then the liquid fraction is that of the limit, (n - 1)/(n + 1);
 * it is never NaN.
 */
public final class RisingFoam {
    /** Newton's method stops when what its last step leaves, about f''/(2 f') of the step's square, is under this share. */
    private static final double STOP = 1e-12;

    private RisingFoam() {}

    /**
     * Liquid fraction of the rising foam alone, without an object; that of the limit when flooded.
     *
     * @param gasFluxMPerS jg, 0 to 10 m/s
     * @param drainageSpeedMPerS K, above 0 to 100 m/s
     * @param exponent n, 1.05 to 10
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double liquidFraction(double gasFluxMPerS, double drainageSpeedMPerS, double exponent) {
        Require.inRange("gasFluxMPerS", gasFluxMPerS, 0, 10, "m/s", "give gas flow over the neck's cross-section");
        requireDrainage(drainageSpeedMPerS, exponent);
        double scaled = gasFluxMPerS / (exponent * drainageSpeedMPerS);
        return exponent == 2 ? channelRoot(scaled) : generalRoot(scaled, exponent);
    }

    /**
     * Lower root of eps (1 - eps)^2 = c, or 1/3 beyond its greatest c, 4/27. The start is the series of the root in c,
     * all of whose terms are positive, so it lies below; the left side is concave there, so Newton climbs to the root
     * without overshoot.
     */
    private static double channelRoot(double c) {
        if (c >= 4.0 / 27) {
            return 1.0 / 3;
        }
        double eps = c * (1 + c * (2 + c * (7 + c * (30 + c * 143))));
        for (int step = 0; step < 40; step++) {
            double gas = 1 - eps;
            double slope = gas * (1 - 3 * eps);
            if (!(slope > 0)) {
                return 1.0 / 3;
            }
            double move = (c - eps * gas * gas) / slope;
            eps += move;
            if ((2 - 3 * eps) * move * move <= STOP * eps * slope) {
                break;
            }
        }
        return Math.min(eps, 1.0 / 3);
    }

    /** The same for eps (1 - eps)^q = c^(1/(n-1)) with q = 2/(n - 1); the start is the first two terms of the series. */
    private static double generalRoot(double c, double exponent) {
        double q = 2 / (exponent - 1);
        double limit = 1 / (1 + q);
        double d = Math.pow(c, 0.5 * q);
        double eps = Math.min(d * (1 + q * d), limit);
        for (int step = 0; step < 40; step++) {
            double gas = 1 - eps;
            double power = Math.pow(gas, q);
            double slope = power * (1 - (1 + q) * eps) / gas;
            double missing = d - eps * power;
            if (!(slope > 0)) {
                return limit;
            }
            double move = missing / slope;
            eps += move;
            if (eps >= limit) {
                return limit;
            }
            double bend = 0.5 * q * (2 - (1 + q) * eps) * power;
            if (bend * move * move <= STOP * eps * slope * gas * gas) {
                break;
            }
        }
        return eps;
    }

    static void requireDrainage(double drainageSpeed, double exponent) {
        Require.inRange("drainageSpeedMPerS", drainageSpeed, 1e-12, 100, "m/s", "see Drainage.speed");
        Require.inRange("exponent", exponent, 1.05, 10, "", "use 2 for channels, 1.5 for nodes");
    }
}
