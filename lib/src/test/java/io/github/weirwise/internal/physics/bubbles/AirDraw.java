package io.github.weirwise.internal.physics.bubbles;

import io.github.weirwise.report.Require;

/**
 * Air flow (m3/s) that an injector pump draws, from the state of the pump, the opening of the air line and the depth at
 * which it works. An assumed curve with the right signs, no published one: replace it by a measured flow where there is
 * one.
 *
 * <p>In units of the rated flow, q: the suction that the pump makes is c^2 - s and falls in a straight line with q; the
 * air line takes from it a loss that grows with (q/o)^2. So L r (q/o)^2 + (1 - L) r q = c^2 - s, with c the pump's
 * condition (speed share; suction goes with its square, affinity laws), o the opening of the air line, s the depth over
 * the depth at which a new pump draws no more, r = 1 - s at the rated depth, and L the share of the suction that a clean
 * line takes at rated flow.
 *
 * @param ratedAirM3PerS air flow when new, with a clean line at the rated depth, 1e-9 to 1 m3/s
 * @param ratedDepthM depth of water over the injector's outlet at which that holds, 0 m to under the stall depth
 * @param stallDepthM depth at which a new pump draws no air at all, 0.01 to 20 m
 * @param lineLossShare L, 0 to 0.95
 * @since 0.1
 */
public record AirDraw(double ratedAirM3PerS, double ratedDepthM, double stallDepthM, double lineLossShare) {
    /** Share of the suction that a clean air line takes; assumed. */
    public static final double USUAL_LINE_LOSS = 0.3;

    /**
     * @throws io.github.weirwise.report.OutOfRangeException outside the limits
     */
    public AirDraw {
        Require.inRange("ratedAirM3PerS", ratedAirM3PerS, 1e-9, 1, "m3/s", "100 L/h is 2.8e-5 m3/s");
        Require.inRange("stallDepthM", stallDepthM, 0.01, 20, "m", "give the depth at which no air is drawn any more");
        Require.inRange(
                "ratedDepthM", ratedDepthM, 0, 0.99 * stallDepthM, "m", "the rated depth is under the stall depth");
        Require.inRange("lineLossShare", lineLossShare, 0, 0.95, "", "use 0.3 if nothing is known");
    }

    /**
     * Air flow, m3/s; 0 when the pump can no longer pull the water down in the air line (which then can fill).
     *
     * @param pumpCondition c, 0 (stopped) to 1 (new)
     * @param airLineOpening o, 0 (shut) to 1 (clean and fully open)
     * @param depthM depth of water over the injector's outlet, 0 to 20 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double airFlow(double pumpCondition, double airLineOpening, double depthM) {
        Require.inRange("pumpCondition", pumpCondition, 0, 1, "", "1 is a new pump, 0 a stopped one");
        Require.inRange("airLineOpening", airLineOpening, 0, 1, "", "1 is a clean open line, 0 a shut one");
        Require.inRange("depthM", depthM, 0, 20, "m", "give the water over the injector's outlet in metres");
        double suction = pumpCondition * pumpCondition - depthM / stallDepthM;
        if (suction <= 0 || airLineOpening == 0) {
            return 0;
        }
        double rated = 1 - ratedDepthM / stallDepthM;
        double line = lineLossShare * rated / (airLineOpening * airLineOpening);
        double pump = (1 - lineLossShare) * rated;
        return ratedAirM3PerS * 2 * suction / (pump + Math.sqrt(pump * pump + 4 * line * suction));
    }
}
