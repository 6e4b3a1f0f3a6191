package io.github.weirwise.internal.physics.foam;

/** The rising foam with its flux and where it floods (Stevenson 2007), to hold the library's liquid fraction against. Arguments are not checked. */
public final class RisenFoam {
    private RisenFoam() {}

    /**
     * A steady rising foam, by Stevenson 2007.
     *
     * @param liquidFraction eps, 0 to (n - 1)/(n + 1)
     * @param liquidFluxMPerS liquid carried upward over the cross-section, m/s
     * @param flooded whether the gas flux is past the limit; the two numbers are then those of the limiting liquid
     *     fraction at the given gas flux, a lower bound of what really comes over
     */
    public record Equilibrium(double liquidFraction, double liquidFluxMPerS, boolean flooded) {}

    /**
     * The rising foam with n = 2.
     *
     * @param gasFluxMPerS jg, 0 to 10 m/s
     * @param drainageSpeedMPerS K, above 0 to 100 m/s
     */
    public static Equilibrium equilibrium(double gasFluxMPerS, double drainageSpeedMPerS) {
        return equilibrium(gasFluxMPerS, drainageSpeedMPerS, Drainage.CHANNEL_EXPONENT);
    }

    /**
     * The rising foam with any exponent.
     *
     * @param gasFluxMPerS jg, 0 to 10 m/s
     * @param drainageSpeedMPerS K, above 0 to 100 m/s
     * @param exponent n, 1.05 to 10
     */
    public static Equilibrium equilibrium(double gasFluxMPerS, double drainageSpeedMPerS, double exponent) {
        double eps = RisingFoam.liquidFraction(gasFluxMPerS, drainageSpeedMPerS, exponent);
        double flux = liquidFlux(gasFluxMPerS, drainageSpeedMPerS, exponent, eps);
        return new Equilibrium(eps, flux, gasFluxMPerS > floodingGasFlux(drainageSpeedMPerS, exponent));
    }

    /**
     * Liquid flux jg eps/(1 - eps) - K eps^n that passes upward at a given liquid fraction, m/s; negative when more runs
     * down than is carried up.
     *
     * @param gasFluxMPerS jg, 0 to 10 m/s
     * @param drainageSpeedMPerS K, above 0 to 100 m/s
     * @param exponent n, 1.05 to 10
     * @param liquidFraction eps, 0 to under 1; the numbers are not looked at, never throws
     */
    public static double liquidFlux(
            double gasFluxMPerS, double drainageSpeedMPerS, double exponent, double liquidFraction) {
        double power = exponent == 2 ? liquidFraction * liquidFraction : Math.pow(liquidFraction, exponent);
        return gasFluxMPerS * liquidFraction / (1 - liquidFraction) - drainageSpeedMPerS * power;
    }

    /**
     * Gas flux at which the rising foam floods, m/s: n K ((n - 1)/(n + 1))^(n - 1) (2/(n + 1))^2; 8 K/27 for n = 2.
     *
     * @param drainageSpeedMPerS K, above 0 to 100 m/s
     * @param exponent n, 1.05 to 10
     */
    public static double floodingGasFlux(double drainageSpeedMPerS, double exponent) {
        double limit = (exponent - 1) / (exponent + 1);
        double power = exponent == 2 ? limit : Math.pow(limit, exponent - 1);
        return exponent * drainageSpeedMPerS * power * (1 - limit) * (1 - limit);
    }

    /**
     * Liquid flux at which a foam drains, m/s downward relative to the bubbles: K eps^n.
     *
     * @param drainageSpeedMPerS K, above 0 to 100 m/s
     * @param exponent n, 1.05 to 10
     * @param liquidFraction eps, 0 to 1
     */
    public static double flux(double drainageSpeedMPerS, double exponent, double liquidFraction) {
        return drainageSpeedMPerS * Math.pow(liquidFraction, exponent);
    }
}
