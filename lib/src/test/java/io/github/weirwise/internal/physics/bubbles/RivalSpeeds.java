package io.github.weirwise.internal.physics.bubbles;

import io.github.weirwise.report.Range;

/**
 * Other laws of the rise speed (m/s) of a single bubble than the one the library uses ({@link TerminalSpeed#contaminated}), to hold it against:
 * Tomiyama, Clift/Grace/Weber, Grace and Mendelson. Arguments are not checked.
 */
public final class RivalSpeeds {
    private static final double GRAVITY = 9.80665;
    private static final double AIR_DENSITY = 1.2;
    private static final double REFERENCE_VISCOSITY = 0.0009;

    private RivalSpeeds() {}

    /** How dirty the bubble's surface is, in the sense of Tomiyama et al. 1998. */
    public enum Surface {
        /** Distilled, fresh water: the surface moves freely. */
        PURE,
        /** Slightly contaminated, as tap water. */
        SLIGHTLY_CONTAMINATED,
        /** Surface at rest. */
        FULLY_CONTAMINATED
    }

    /** Diameters for which Mendelson's wave analogy is published, m. */
    public static final Range MENDELSON_DIAMETER_M = new Range(0.0013, 0.02);

    /**
     * Speed, m/s, by Tomiyama, Kataoka, Zun &amp; Sakaguchi 1998, JSME International Journal B 41:472: CD = max{min[a/Re (1 +
     * 0.15 Re^0.687), b/Re], (8/3) Eo/(Eo + 4)} with a = 16, b = 48 (pure), a = 24, b = 72 (slightly contaminated), a =
     * 24 without the second branch (fully contaminated). Published for Eo 0.01 to 1000, Re 0.001 to 1e5.
     *
     * @param diameterM 1e-6 to 0.05 m
     * @param densityKgPerM3 density of the liquid, 500 to 2000 kg/m3
     * @param viscosityPaS dynamic viscosity of the liquid, 1e-4 to 0.1 Pa s
     * @param surfaceTensionNPerM surface tension of the liquid, 0.005 to 0.2 N/m
     * @param surface how dirty the surface is
     */
    public static double tomiyama(
            double diameterM, double densityKgPerM3, double viscosityPaS, double surfaceTensionNPerM, Surface surface) {
        double best = bestNumber(diameterM, densityKgPerM3, viscosityPaS);
        double round = speed(roundReynolds(best, surface), diameterM, densityKgPerM3, viscosityPaS);
        double eotvos = eotvos(diameterM, densityKgPerM3, surfaceTensionNPerM);
        double drag = 8.0 / 3 * eotvos / (eotvos + 4);
        double flattened = Math.sqrt(4 * GRAVITY * diameterM * buoyancy(densityKgPerM3) / (3 * densityKgPerM3 * drag));
        // The larger drag decides, so the slower of the two speeds.
        return Math.min(round, flattened);
    }

    /**
     * Speed of a rigid sphere, m/s, without iteration: Clift, Grace &amp; Weber 1978, table 5.3, Reynolds number as a
     * function of the Best number, up to 1.55e7. Within 5 % of {@link TerminalSpeed#contaminated} up to Re 400.
     *
     * @param diameterM 1e-6 to 0.05 m
     * @param densityKgPerM3 density of the liquid, 500 to 2000 kg/m3
     * @param viscosityPaS dynamic viscosity of the liquid, 1e-4 to 0.1 Pa s
     */
    public static double cliftSphere(double diameterM, double densityKgPerM3, double viscosityPaS) {
        double best = bestNumber(diameterM, densityKgPerM3, viscosityPaS);
        return speed(cliftReynolds(best), diameterM, densityKgPerM3, viscosityPaS);
    }

    /**
     * Speed of a contaminated ellipsoidal bubble, m/s: Grace, Wairegi &amp; Nguyen 1976; Clift et al. 1978, equation 7-4.
     * Published for Morton numbers under 1e-3, Eo under 40, Re over 0.1 and H over 2 (about 0.6 mm in water).
     *
     * @param diameterM 1e-6 to 0.05 m
     * @param densityKgPerM3 density of the liquid, 500 to 2000 kg/m3
     * @param viscosityPaS dynamic viscosity of the liquid, 1e-4 to 0.1 Pa s
     * @param surfaceTensionNPerM surface tension of the liquid, 0.005 to 0.2 N/m
     */
    public static double graceEllipsoid(
            double diameterM, double densityKgPerM3, double viscosityPaS, double surfaceTensionNPerM) {
        double morton = Math.pow(morton(densityKgPerM3, viscosityPaS, surfaceTensionNPerM), -0.149);
        double eotvos = eotvos(diameterM, densityKgPerM3, surfaceTensionNPerM);
        double h = 4.0 / 3 * eotvos * morton * Math.pow(viscosityPaS / REFERENCE_VISCOSITY, -0.14);
        double j = h <= 59.3 ? 0.94 * Math.pow(h, 0.757) : 3.42 * Math.pow(h, 0.441);
        return speed(Math.max(0, morton * (j - 0.857)), diameterM, densityKgPerM3, viscosityPaS);
    }

    /**
     * Speed of a large clean bubble, m/s: Mendelson 1967, AIChE Journal 13:250, sqrt(2 sigma/(rho d) + g d/2), for
     * {@link #MENDELSON_DIAMETER_M}.
     *
     * @param diameterM 1e-6 to 0.05 m
     * @param densityKgPerM3 density of the liquid, 500 to 2000 kg/m3
     * @param surfaceTensionNPerM surface tension of the liquid, 0.005 to 0.2 N/m
     */
    public static double mendelson(double diameterM, double densityKgPerM3, double surfaceTensionNPerM) {
        return Math.sqrt(2 * surfaceTensionNPerM / (densityKgPerM3 * diameterM) + GRAVITY * diameterM / 2);
    }

    /**
     * Morton number g mu^4 (rho - rho air)/(rho^2 sigma^3) of a liquid, without unit.
     *
     * @param densityKgPerM3 density of the liquid, 500 to 2000 kg/m3
     * @param viscosityPaS dynamic viscosity of the liquid, 1e-4 to 0.1 Pa s
     * @param surfaceTensionNPerM surface tension of the liquid, 0.005 to 0.2 N/m
     */
    public static double morton(double densityKgPerM3, double viscosityPaS, double surfaceTensionNPerM) {
        double square = viscosityPaS * viscosityPaS;
        double cube = surfaceTensionNPerM * surfaceTensionNPerM * surfaceTensionNPerM;
        return GRAVITY * square * square * buoyancy(densityKgPerM3) / (densityKgPerM3 * densityKgPerM3 * cube);
    }

    /**
     * Reynolds number rho U d/mu of a bubble, without unit; by definition.
     *
     * @param speedMPerS U, speed through the liquid, 0 to 100 m/s
     * @param diameterM 1e-6 to 0.05 m
     * @param densityKgPerM3 density of the liquid, 500 to 2000 kg/m3
     * @param viscosityPaS dynamic viscosity of the liquid, 1e-4 to 0.1 Pa s
     */
    public static double reynolds(double speedMPerS, double diameterM, double densityKgPerM3, double viscosityPaS) {
        return densityKgPerM3 * speedMPerS * diameterM / viscosityPaS;
    }

    private static double roundReynolds(double best, Surface surface) {
        return switch (surface) {
            case PURE -> Math.max(SphereDrag.reynolds(best, 16), best / 48);
            case SLIGHTLY_CONTAMINATED -> Math.max(SphereDrag.reynolds(best, 24), best / 72);
            case FULLY_CONTAMINATED -> SphereDrag.reynolds(best, 24);
        };
    }

    private static double bestNumber(double diameter, double density, double viscosity) {
        double cube = diameter * diameter * diameter;
        return 4 * density * buoyancy(density) * GRAVITY * cube / (3 * viscosity * viscosity);
    }

    private static double speed(double reynolds, double diameter, double density, double viscosity) {
        return reynolds * viscosity / (density * diameter);
    }

    private static double buoyancy(double density) {
        return density - AIR_DENSITY;
    }

    private static double eotvos(double diameter, double density, double tension) {
        return GRAVITY * buoyancy(density) * diameter * diameter / tension;
    }

    /** Clift, Grace and Weber 1978, table 5.3; the last polynomial is published up to a Best number of 1.55e7. */
    static double cliftReynolds(double best) {
        if (best <= 73) {
            return best / 24 + best * best * (-1.7569e-4 + best * (6.9252e-7 - best * 2.3027e-10));
        }
        double w = Math.log10(best);
        double log = best <= 580
                ? -1.7095 + w * (1.33438 - w * 0.11591)
                : -1.81391 + w * (1.34671 + w * (-0.12427 + w * 0.006344));
        return Math.pow(10, log);
    }
}
