package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;

/**
 * Concentration (kg/m3) of foam liquid: what the water held plus what the bubbles' surfaces carried, after Lemlich 1968
 * and 1972 (Adsorptive Bubble Separation Techniques).
 *
 * <p>All functions throw {@link io.github.weirwise.report.OutOfRangeException} for negative or not finite numbers, for a
 * bubble diameter outside 1e-5 to 0.1 m and for a liquid flow or fraction of zero.
 *
 * @since 0.1
 */
public final class Enrichment {
    private Enrichment() {}

    /**
     * Concentration of the liquid that leaves over the lip, kg/m3: C + (6/d) Gamma Ql/W.
     *
     * @param bulkKgPerM3 C, concentration in the water, 0 to 1000 kg/m3
     * @param bubbleDiameterM d, Sauter mean diameter of the bubbles that leave, 1e-5 to 0.1 m
     * @param loadKgPerM2 Gamma, surface load, 0 to 1e-3 kg/m2
     * @param gasFlowM3PerS Ql, gas that leaves as foam, 0 to 10 m3/s
     * @param liquidFlowM3PerS W, liquid that leaves, above 0 to 10 m3/s
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double concentration(
            double bulkKgPerM3,
            double bubbleDiameterM,
            double loadKgPerM2,
            double gasFlowM3PerS,
            double liquidFlowM3PerS) {
        requireSurface(bulkKgPerM3, bubbleDiameterM, loadKgPerM2);
        Require.inRange("gasFlowM3PerS", gasFlowM3PerS, 0, 10, "m3/s", "give the gas that leaves as foam");
        Require.inRange("liquidFlowM3PerS", liquidFlowM3PerS, 1e-18, 10, "m3/s", "without liquid there is no strength");
        return bulkKgPerM3 + 6 / bubbleDiameterM * loadKgPerM2 * gasFlowM3PerS / liquidFlowM3PerS;
    }

    /**
     * The same with reflux: burst bubbles hand a share of their load to the liquid that goes on rising, and a larger
     * bubble keeps less surface than the small ones it was made of. C + (6/d0) Gamma (Ql (d0/d) + r (Qg - Ql (d0/d)))/W
     * with d0 the diameter at which the surface was loaded.
     *
     * @param bulkKgPerM3 C, concentration in the water, 0 to 1000 kg/m3
     * @param freshDiameterM d0, Sauter mean diameter in the water, 1e-5 to 0.1 m
     * @param lipDiameterM d, Sauter mean diameter at the lip, d0 to 0.1 m
     * @param loadKgPerM2 Gamma, surface load in the water, 0 to 1e-3 kg/m2
     * @param gasInM3PerS Qg, gas that enters the foam, 0 to 10 m3/s
     * @param gasOutM3PerS Ql, gas that leaves as foam, 0 to Qg
     * @param liquidFlowM3PerS W, liquid that leaves, above 0 to 10 m3/s
     * @param refluxShare r, share of the lost surface's load that stays with the rising liquid, 0 to 1; not measured
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double concentrationWithReflux(
            double bulkKgPerM3,
            double freshDiameterM,
            double lipDiameterM,
            double loadKgPerM2,
            double gasInM3PerS,
            double gasOutM3PerS,
            double liquidFlowM3PerS,
            double refluxShare) {
        requireSurface(bulkKgPerM3, freshDiameterM, loadKgPerM2);
        Require.inRange("lipDiameterM", lipDiameterM, freshDiameterM, 0.1, "m", "bubbles do not shrink on the way up");
        Require.inRange("gasInM3PerS", gasInM3PerS, 0, 10, "m3/s", "give the gas that enters the foam");
        Require.inRange("gasOutM3PerS", gasOutM3PerS, 0, gasInM3PerS, "m3/s", "no more leaves than enters");
        Require.inRange("liquidFlowM3PerS", liquidFlowM3PerS, 1e-18, 10, "m3/s", "without liquid there is no strength");
        Require.inRange("refluxShare", refluxShare, 0, 1, "", "0 hands nothing on, 1 everything");
        double kept = gasOutM3PerS * freshDiameterM / lipDiameterM;
        double gas = kept + refluxShare * (gasInM3PerS - kept);
        return bulkKgPerM3 + 6 / freshDiameterM * loadKgPerM2 * gas / liquidFlowM3PerS;
    }

    /**
     * Enrichment C foam/C bulk of a foam without reflux, by its liquid fraction: E = 1 + 6 Gamma (1 - eps)/(d eps C)
     * (simple mode, Lemlich).
     *
     * @param bulkKgPerM3 C, concentration in the water, 1e-12 to 1000 kg/m3
     * @param bubbleDiameterM d, Sauter mean diameter, 1e-5 to 0.1 m
     * @param loadKgPerM2 Gamma, surface load, 0 to 1e-3 kg/m2
     * @param liquidFraction eps, 1e-9 to 1
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double simpleMode(
            double bulkKgPerM3, double bubbleDiameterM, double loadKgPerM2, double liquidFraction) {
        requireSurface(bulkKgPerM3, bubbleDiameterM, loadKgPerM2);
        Require.inRange("bulkKgPerM3", bulkKgPerM3, 1e-12, 1000, "kg/m3", "enrichment needs something in the water");
        Require.inRange("liquidFraction", liquidFraction, 1e-9, 1, "", "give the share of the foam that is liquid");
        return 1 + 6 * loadKgPerM2 * (1 - liquidFraction) / (bubbleDiameterM * liquidFraction * bulkKgPerM3);
    }

    private static void requireSurface(double bulk, double diameter, double load) {
        Require.inRange("bulkKgPerM3", bulk, 0, 1000, "kg/m3", "1 mg/L is 0.001 kg/m3");
        Require.inRange("bubbleDiameterM", diameter, 1e-5, 0.1, "m", "give a diameter in metres, 0.0022 for 2.2 mm");
        Require.inRange("loadKgPerM2", load, 0, 1e-3, "kg/m2", "proteins hold about 2e-6");
    }
}
