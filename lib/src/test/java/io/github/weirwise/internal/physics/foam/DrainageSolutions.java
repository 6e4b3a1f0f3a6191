package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;

/**
 * Exact solutions of the foam drainage equation, to hold a numerical foam column against: Verbist, Weaire &amp; Kraynik
 * 1996, J. Phys.: Condensed Matter 8:3715. Without units where the equation is: da/dt + d/dx [a^2 - (sqrt a/2) da/dx] =
 * 0, x downward.
 *
 * @since 0.1
 */
public final class DrainageSolutions {
    private DrainageSolutions() {}

    /**
     * Area, without unit, of a solitary wave of wetness that runs down into dry foam: a = v tanh^2(sqrt(v) (v t - x)) above its front, 0 below.
     *
     * @param speed v, 0 to 1e6
     * @param behindFront v t - x, distance behind the front; any number, 0 or less lies below the front
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double solitaryWave(double speed, double behindFront) {
        Require.inRange("speed", speed, 0, 1e6, "", "give the front's speed in the equation's own units");
        double wave = Math.tanh(Math.sqrt(speed) * Math.max(0, behindFront));
        return speed * wave * wave;
    }

    /**
     * Area, without unit, of foam at rest on its water: a = (a0^-0.5 + x)^-2.
     *
     * @param atWater a0 where foam meets water, 1e-9 to 1e6
     * @param height x upward from there, 0 to 1e9
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double atRest(double atWater, double height) {
        Require.inRange("atWater", atWater, 1e-9, 1e6, "", "give the area at the water in the equation's own units");
        Require.inRange("height", height, 0, 1e9, "", "give the height in the equation's own units");
        double root = 1 / Math.sqrt(atWater) + height;
        return 1 / (root * root);
    }

    /**
     * Liquid fraction of a tall foam that drains freely, without capillarity: eps = (z/(n K t))^(1/(n - 1)), z from the
     * top down; falls as 1/t for n = 2.
     *
     * @param depthM z, 0 to 1e3 m
     * @param timeS t, 1e-6 to 1e12 s
     * @param drainageSpeedMPerS K of {@link Drainage}, above 0 to 100 m/s
     * @param exponent n, 1.05 to 10
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double freeDrainage(double depthM, double timeS, double drainageSpeedMPerS, double exponent) {
        Require.inRange("depthM", depthM, 0, 1e3, "m", "give the depth below the foam's top in metres");
        Require.inRange("timeS", timeS, 1e-6, 1e12, "s", "give the time since drainage began");
        RisingFoam.requireDrainage(drainageSpeedMPerS, exponent);
        return Math.pow(depthM / (exponent * drainageSpeedMPerS * timeS), 1 / (exponent - 1));
    }

    /**
     * Exponent p of the front's speed in forced drainage, V proportional to j^p with p = (n - 1)/n: 1/2 for channels, 1/3
     * for nodes (Koehler, Hilgenfeldt &amp; Stone 1999, PRL 82:4232).
     *
     * @param exponent n, 1.05 to 10
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double forcedFrontExponent(double exponent) {
        RisingFoam.requireDrainage(1, exponent);
        return (exponent - 1) / exponent;
    }
}
