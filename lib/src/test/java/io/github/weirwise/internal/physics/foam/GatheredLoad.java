package io.github.weirwise.internal.physics.foam;

/**
 * Surface load (kg/m2) that a bubble gathers in a time: transport to the surface in series with the Langmuir isotherm. Derived, not published as
 * such: dGamma/dt = k (c - c_s), where c_s is the concentration in balance with Gamma. Arguments are not checked.
 *
 * @param isotherm what the surface would hold at equilibrium
 * @param transferSpeedMPerS k, see {@link BubbleUptake#transferSpeed}
 */
public record GatheredLoad(Adsorption isotherm, double transferSpeedMPerS) {
    /**
     * Time to gather a load in still water by diffusion alone, s: Ward &amp; Tordai 1946, J. Chem. Phys. 14:453, short
     * times, pi Gamma^2/(4 D c^2).
     *
     * @param loadKgPerM2 Gamma, 0 to 1e-3 kg/m2
     * @param concentrationKgPerM3 c, 1e-9 to 1000 kg/m3
     * @param diffusivityM2PerS D, 1e-13 to 1e-8 m2/s
     */
    public static double wardTordaiTime(double loadKgPerM2, double concentrationKgPerM3, double diffusivityM2PerS) {
        double ratio = loadKgPerM2 / concentrationKgPerM3;
        return Math.PI * ratio * ratio / (4 * diffusivityM2PerS);
    }

    /**
     * Time to gather a share of the equilibrium load, s. Integrating the balance gives t = K/(k (1 + K c)) (Gamma + (Gm -
     * Ge) ln(Ge/(Ge - Gamma))), with Ge the equilibrium load.
     *
     * @param concentrationKgPerM3 c, 1e-12 to 1000 kg/m3
     * @param share Gamma/Ge, 0 to under 1
     */
    public double timeTo(double concentrationKgPerM3, double share) {
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
     */
    public double load(double concentrationKgPerM3, double timeS) {
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
