package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;

/**
 * How fast liquid runs down between bubbles, from dry foam to a froth of round bubbles: flux relative to the bubbles K q
 * with q = eps^n/(1 - b eps + c eps^2)^2 and K = m rho g r^2/mu ({@link Drainage}).
 *
 * <p>With b = c = 0 it is Stevenson's power law (2006), good for dry foam. {@link #toPacking} takes b = 2.15 and c = 1.37:
 * Rouyer, Pitois, Lorenceau &amp; Louvet 2010, Physics of Fluids 22:043302, who measured that foam with films at rest joins
 * the Kozeny-Carman law of packed spheres (coefficients from memory; at a liquid fraction of 0.36 they agree with
 * Kozeny-Carman's r^2 eps^3/(45 (1 - eps)^2) within 2 %). Carried on beyond 0.4, for froth.
 *
 * @param mobility m, 1e-5 to 1
 * @param exponent n, 1.05 to 10
 * @param bend b, 0 to 3
 * @param curve c, 0 to 3; b^2 must be below 4 c unless both are 0
 * @since 0.1
 */
public record FoamPermeability(double mobility, double exponent, double bend, double curve) {
    private static final double GRAVITY = 9.80665;

    /**
     * @throws io.github.weirwise.report.OutOfRangeException outside the limits
     * @throws IllegalArgumentException if the denominator has a zero
     */
    public FoamPermeability {
        Require.inRange("mobility", mobility, 1e-5, 1, "", "use 0.0033 for rigid films, 0.016 for mobile ones");
        Require.inRange("exponent", exponent, 1.05, 10, "", "use 2 for channels, 1.5 for nodes");
        Require.inRange("bend", bend, 0, 3, "", "use 0 for the power law, 2.15 up to packing");
        Require.inRange("curve", curve, 0, 3, "", "use 0 for the power law, 1.37 up to packing");
        if (bend * bend >= 4 * curve && bend > 0) {
            throw new IllegalArgumentException("bend " + bend + " and curve " + curve
                    + " make the permeability infinite at some wetness; keep bend^2 below 4 curve");
        }
    }

    /**
     * Stevenson's power law.
     *
     * @param mobility m, 1e-5 to 1
     * @param exponent n, 1.05 to 10
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static FoamPermeability powerLaw(double mobility, double exponent) {
        return new FoamPermeability(mobility, exponent, 0, 0);
    }

    /**
     * The law that joins packed spheres where the foam is wet.
     *
     * @param mobility m, 1e-5 to 1
     * @param exponent n, 1.05 to 10
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static FoamPermeability toPacking(double mobility, double exponent) {
        return new FoamPermeability(mobility, exponent, 2.15, 1.37);
    }

    /**
     * The share q(eps) of K at which liquid runs down, for eps from 0 to 1.
     *
     * @param liquidFraction eps; outside 0 to 1 the answer means nothing; never throws
     */
    public double flux(double liquidFraction) {
        double wet = 1 - liquidFraction * (bend - curve * liquidFraction);
        return power(liquidFraction) / (wet * wet);
    }

    /**
     * dq/d eps, without unit.
     *
     * @param liquidFraction eps; outside 0 to 1 the answer means nothing; never throws
     */
    public double slope(double liquidFraction) {
        if (liquidFraction <= 0) {
            return 0;
        }
        double wet = 1 - liquidFraction * (bend - curve * liquidFraction);
        double wetSlope = 2 * curve * liquidFraction - bend;
        return power(liquidFraction) / (wet * wet) * (exponent / liquidFraction - 2 * wetSlope / wet);
    }

    private double power(double liquidFraction) {
        return exponent == 2 ? liquidFraction * liquidFraction : Math.pow(liquidFraction, exponent);
    }

    /** K over the square of the bubbles' radius, 1/(m s): m rho g/mu. */
    double speedPerSquareRadius(FoamLiquid liquid) {
        return mobility * liquid.densityKgPerM3() * GRAVITY / liquid.viscosityPaS();
    }
}
