package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;

/**
 * Surface load (kg/m2) that a bubble really gathers in the seconds of its rise: transport to the surface (Froessling 1938;
 * Ranz &amp; Marshall 1952) in series with the Langmuir isotherm. Derived, not published as such: dGamma/dt = k (c - c_s), where c_s is the concentration in balance with Gamma.
 *
 * <p>In tank water a bubble has seconds while the load needs tens of seconds to minutes, so {@link Adsorption#load} alone
 * is too much. k comes from {@link #transferSpeed}; sorption itself is taken as instant.
 *
 * @param isotherm what the surface would hold at equilibrium
 * @param transferSpeedMPerS k, 1e-9 to 1 m/s
 * @since 0.1
 */
public record BubbleUptake(Adsorption isotherm, double transferSpeedMPerS) {
    /** Diffusivity of a middling protein (66 kg/mol) in water, m2/s; from memory. */
    public static final double PROTEIN_DIFFUSIVITY = 6e-11;

    /**
     * @throws io.github.weirwise.report.OutOfRangeException outside the limits
     */
    public BubbleUptake {
        if (isotherm == null) {
            throw new IllegalArgumentException("isotherm must be given");
        }
        Require.inRange("transferSpeedMPerS", transferSpeedMPerS, 1e-9, 1, "m/s", "see BubbleUptake.transferSpeed");
    }

    /**
     * Speed k of transport to a rigid sphere, m/s: Sh = 2 + 0.6 Re^(1/2) Sc^(1/3) (Froessling 1938; Ranz &amp; Marshall
     * 1952), k = Sh D/d.
     *
     * @param riseSpeedMPerS 0 to 10 m/s
     * @param diameterM bubble diameter, 1e-6 to 0.05 m
     * @param kinematicViscosityM2PerS 1e-8 to 1e-3 m2/s
     * @param diffusivityM2PerS D of what is gathered, 1e-13 to 1e-8 m2/s
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double transferSpeed(
            double riseSpeedMPerS, double diameterM, double kinematicViscosityM2PerS, double diffusivityM2PerS) {
        Require.inRange("riseSpeedMPerS", riseSpeedMPerS, 0, 10, "m/s", "give the bubble's speed through the water");
        Require.inRange("diameterM", diameterM, 1e-6, 0.05, "m", "give the bubble's diameter in metres");
        Require.inRange("kinematicViscosityM2PerS", kinematicViscosityM2PerS, 1e-8, 1e-3, "m2/s", "water has 1e-6");
        Require.inRange("diffusivityM2PerS", diffusivityM2PerS, 1e-13, 1e-8, "m2/s", "proteins have about 6e-11");
        double reynolds = riseSpeedMPerS * diameterM / kinematicViscosityM2PerS;
        double schmidt = kinematicViscosityM2PerS / diffusivityM2PerS;
        double sherwood = 2 + 0.6 * Math.sqrt(reynolds) * Math.cbrt(schmidt);
        return sherwood * diffusivityM2PerS / diameterM;
    }

    /**
     * Time to gather a load in still water by diffusion alone, s: Ward &amp; Tordai 1946, J. Chem. Phys. 14:453, short
     * times, pi Gamma^2/(4 D c^2).
     *
     * @param loadKgPerM2 Gamma, 0 to 1e-3 kg/m2
     * @param concentrationKgPerM3 c, 1e-9 to 1000 kg/m3
     * @param diffusivityM2PerS D, 1e-13 to 1e-8 m2/s
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double wardTordaiTime(double loadKgPerM2, double concentrationKgPerM3, double diffusivityM2PerS) {
        Require.inRange("loadKgPerM2", loadKgPerM2, 0, 1e-3, "kg/m2", "proteins hold about 2e-6");
        Require.inRange("concentrationKgPerM3", concentrationKgPerM3, 1e-9, 1000, "kg/m3", "1 mg/L is 0.001 kg/m3");
        Require.inRange("diffusivityM2PerS", diffusivityM2PerS, 1e-13, 1e-8, "m2/s", "proteins have about 6e-11");
        double ratio = loadKgPerM2 / concentrationKgPerM3;
        return Math.PI * ratio * ratio / (4 * diffusivityM2PerS);
    }

    /**
     * Time to gather a share of the equilibrium load, s. Integrating the balance gives t = K/(k (1 + K c)) (Gamma + (Gm -
     * Ge) ln(Ge/(Ge - Gamma))), with Ge the equilibrium load.
     *
     * @param concentrationKgPerM3 c, 1e-12 to 1000 kg/m3
     * @param share Gamma/Ge, 0 to under 1
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double timeTo(double concentrationKgPerM3, double share) {
        Require.inRange("concentrationKgPerM3", concentrationKgPerM3, 1e-12, 1000, "kg/m3", "1 mg/L is 0.001 kg/m3");
        Require.inRange("share", share, 0, 1 - 1e-12, "", "full load takes for ever");
        double equilibrium = isotherm.load(concentrationKgPerM3);
        double affinity = isotherm.affinityM3PerKg();
        double speed = transferSpeedMPerS * (1 + affinity * concentrationKgPerM3) / affinity;
        double resting = (isotherm.saturationKgPerM2() - equilibrium) * -Math.log1p(-share);
        return (share * equilibrium + resting) / speed;
    }

    /**
     * Load after a time, kg/m2: the inverse of {@link #timeTo}, never above c k t nor above the equilibrium load.
     *
     * @param concentrationKgPerM3 c, 0 to 1000 kg/m3
     * @param timeS 0 to 1e9 s
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double load(double concentrationKgPerM3, double timeS) {
        Require.inRange("timeS", timeS, 0, 1e9, "s", "give the time that the bubble spends in the water");
        double equilibrium = isotherm.load(concentrationKgPerM3);
        if (concentrationKgPerM3 < 1e-12 || timeS == 0) {
            return 0;
        }
        double high = Math.min(1 - 1e-12, transferSpeedMPerS * timeS * concentrationKgPerM3 / equilibrium);
        double low = 0;
        for (int step = 0; step < 60; step++) {
            double middle = 0.5 * (low + high);
            if (timeTo(concentrationKgPerM3, middle) < timeS) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high) * equilibrium;
    }
}
