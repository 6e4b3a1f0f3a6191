package io.github.weirwise.internal.physics.hydraulics;

import io.github.weirwise.report.Require;

/**
 * What an open gravity drain passes (m3/s): quietly, with air in the pipe (Simpson 1969; Hills 1983; from memory), or full
 * as a siphon (Darcy and Weisbach, {@link Pipe}).
 *
 * <p>Between the two limits, which differ 6 to 16 times, a drain gulps, surges and slurps air.
 */
public final class Drain {
    /** Froude number V/sqrt(g D) up to which an upright pipe vents itself (Simpson 1969; Hills 1983; from memory). */
    public static final double SELF_VENTING_FROUDE = 0.3;

    private static final double GRAVITY = 9.80665;

    private Drain() {}

    /**
     * Greatest discharge of a quiet, self-venting upright drain, m3/s: 0.3 sqrt(g D) A.
     *
     * @param boreM inner diameter, 0.001 to 10 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double selfVenting(double boreM) {
        Require.inRange("boreM", boreM, 0.001, 10, "m", "give the inner diameter in metres");
        return SELF_VENTING_FROUDE * Math.sqrt(GRAVITY * boreM) * Math.PI / 4 * boreM * boreM;
    }

    /**
     * Smallest bore of a drain that passes a discharge quietly, m: the inverse of {@link #selfVenting}.
     *
     * @param dischargeM3PerS 1e-9 to 1000 m3/s
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double selfVentingBore(double dischargeM3PerS) {
        Require.inRange("dischargeM3PerS", dischargeM3PerS, 1e-9, 1000, "m3/s", "give the flow down the drain");
        return Math.pow(dischargeM3PerS / (SELF_VENTING_FROUDE * Math.sqrt(GRAVITY) * Math.PI / 4), 0.4);
    }

    /**
     * Water (m3) that runs back into the sump when the pump stops: the tank drains to the lowest of its openings, and the
     * pipes empty. Volume = A max(0, level - min(crest, break)) + pipes. Plain geometry.
     *
     * @param tankAreaM2 surface of the tank, 0 to 1e4 m2
     * @param levelM running level over any datum, -1000 to 1000 m
     * @param overflowCrestM crest of the overflow over the same datum, -1000 to 1000 m
     * @param siphonBreakM height at which the return line draws air, -1000 to 1000 m: its siphon-break hole, or its mouth if it
     *     has none or the hole is blocked
     * @param pipeVolumeM3 content of the pipes that empty, 0 to 100 m3
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double backflowVolume(
            double tankAreaM2, double levelM, double overflowCrestM, double siphonBreakM, double pipeVolumeM3) {
        Require.inRange("tankAreaM2", tankAreaM2, 0, 1e4, "m2", "give length x width of the tank in metres");
        Require.inRange("levelM", levelM, -1000, 1000, "m", "give heights over one datum in metres");
        Require.inRange("overflowCrestM", overflowCrestM, -1000, 1000, "m", "give heights over one datum in metres");
        Require.inRange("siphonBreakM", siphonBreakM, -1000, 1000, "m", "give heights over one datum in metres");
        Require.inRange("pipeVolumeM3", pipeVolumeM3, 0, 100, "m3", "one litre is 0.001 m3");
        double drop = levelM - Math.min(overflowCrestM, siphonBreakM);
        return tankAreaM2 * Math.max(0, drop) + pipeVolumeM3;
    }
}
