package io.github.weirwise.internal.physics.hydraulics;

import io.github.weirwise.report.Range;
import io.github.weirwise.report.Require;

/**
 * Discharge (m3/s) over a thin-plate rectangular weir for a head (m), and the reverse, by Kindsvater &amp; Carter (1957)
 * as in ISO 1438 and the USBR Water Measurement Manual, drowned by Villemonte (1947).
 *
 * <p>Q = (alpha + beta h/p) (2/3) sqrt(2 g) (b + kb) (h + kh)^1.5 with kh = 1 mm; alpha, beta and kb depend on b/B
 * (ISO 1438 tables, from memory; the US coefficients of the USBR table agree within 0.3 %). The published range is
 * heads of 0.03 to 1 m, crests from 0.15 m wide and 0.10 m high, and
 * {@link #PUBLISHED_HEAD_OVER_CREST}; overflow weirs of small tanks lie below it, hence {@link #headBand}. The nappe must
 * be aired and fall clear: tailwater at least 50 mm below the crest, else use {@link #drownedHead}.
 *
 * @param widthM width b of the crest, 0.001 to 100 m
 * @param channelWidthM width B of the channel in front of it, not less than the crest's; equal means full width
 * @param crestHeightM height p of the crest above the channel floor, 0.001 to 100 m
 */
public record RectangularWeir(double widthM, double channelWidthM, double crestHeightM) {
    /** Ratios of head to crest height for which the formula is published. */
    public static final Range PUBLISHED_HEAD_OVER_CREST = new Range(0, 2.5);
    /** Water can stand this high over a dry crest before it starts to run, m: 2 capillary lengths x sin 45 degrees. */
    public static final double STARTING_HEAD_M = 0.0038;

    private static final double GRAVITY = 9.80665;
    private static final double HEAD_CORRECTION_M = 0.001;
    private static final double GREATEST_HEAD_M = 100;

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a length is out of its limits or the crest is wider than
     *     the channel
     */
    public RectangularWeir {
        Require.inRange("widthM", widthM, 0.001, 100, "m", "give the width of the overflow crest in metres");
        Require.inRange(
                "channelWidthM", channelWidthM, widthM, 1000, "m", "give a channel at least as wide as the crest");
        Require.inRange(
                "crestHeightM", crestHeightM, 0.001, 100, "m", "give the crest's height above the chamber floor");
    }

    /**
     * Free discharge, m3/s. No water passes at or below the crest; just above it the formula's own small-head term
     * starts with a step of about 0.2 L/h per mm of width.
     *
     * @param headM water level above the crest, -100 to 100 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double discharge(double headM) {
        Require.inRange(
                "headM", headM, -GREATEST_HEAD_M, GREATEST_HEAD_M, "m", "give the head over the crest in metres");
        if (headM <= 0) {
            return 0;
        }
        return freeDischarge(headM);
    }

    /**
     * Head that passes a free discharge, m, the inverse of {@link #discharge}; 0 for a discharge that the formula passes
     * at no head. Newton's method in the root of the effective head, in which the formula is a polynomial; from above it
     * converges without overshoot.
     *
     * @param dischargeM3PerS 0 to 1000 m3/s
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double head(double dischargeM3PerS) {
        requireDischarge(dischargeM3PerS);
        WeirShape shape = shape();
        double target = dischargeM3PerS / coefficient(shape);
        double slope = shape.beta() / crestHeightM;
        double cubic = shape.alpha() - slope * HEAD_CORRECTION_M;
        // A cube root to a few digits is enough to start from, and twice as quick as Math.cbrt.
        double x = target > 0 ? Math.exp(Math.log(target / cubic) / 3) : 0;
        double steadyShare = share(shape, GREATEST_HEAD_M);
        double steadyFrom = PUBLISHED_HEAD_OVER_CREST.high() * crestHeightM + HEAD_CORRECTION_M;
        if (slope < 0 && target >= steadyShare * steadyFrom * Math.sqrt(steadyFrom)) {
            return Math.cbrt(target / steadyShare) * Math.cbrt(target / steadyShare) - HEAD_CORRECTION_M;
        }
        for (int step = 0; step < 30; step++) {
            double square = x * x;
            double excess = square * x * (cubic + slope * square) - target;
            double gain = square * (3 * cubic + 5 * slope * square);
            double move = gain > 0 ? excess / gain : 0;
            x -= move;
            // What the step leaves is under twice its square over x, a rounding error from here on.
            if (Math.abs(move) <= 1e-7 * x) {
                break;
            }
        }
        return Math.max(0, x * x - HEAD_CORRECTION_M);
    }

    /**
     * Lowest and highest head that a discharge is likely to need, m. The relative uncertainty of the discharge is taken
     * as 3 % from 30 mm of head upward, 6 % at 25, 12.5 % at 15, 20 % at 10, 30 % at 5 mm: engineering judgement, no
     * published source; below 10-15 mm the nappe clings and dirt on the crest matters. The upper end is never below
     * {@link #STARTING_HEAD_M}, because water can stand that high before it runs.
     *
     * @param dischargeM3PerS 0 to 1000 m3/s
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Range headBand(double dischargeM3PerS) {
        double share = WeirShape.dischargeUncertainty(head(dischargeM3PerS));
        double low = head(dischargeM3PerS / (1 + share));
        double high = head(dischargeM3PerS / (1 - share));
        return new Range(low, Math.max(high, STARTING_HEAD_M));
    }

    /**
     * Share of the free discharge that passes when the water behind the weir stands above the crest: Villemonte 1947,
     * Engineering News-Record 139:866, (1 - (h2/h1)^1.5)^0.385. One for h2 at or under the crest, zero for h2 at or
     * above h1.
     *
     * @param upstreamHeadM h1, m above the crest, finite
     * @param downstreamHeadM h2, m above the crest, finite; may be negative
     * @throws io.github.weirwise.report.OutOfRangeException if one is not within -100 to 100 m
     */
    public static double drownedFactor(double upstreamHeadM, double downstreamHeadM) {
        requireHead("upstreamHeadM", upstreamHeadM);
        requireHead("downstreamHeadM", downstreamHeadM);
        if (upstreamHeadM <= 0 || downstreamHeadM >= upstreamHeadM) {
            return 0;
        }
        return downstreamHeadM <= 0
                ? 1
                : Math.pow(DrownedWeir.base(upstreamHeadM, downstreamHeadM), DrownedWeir.VILLEMONTE);
    }

    /**
     * Upstream head that passes a discharge over the drowned weir, m; the free head when the downstream side stands at
     * or below the crest, the downstream head itself when nothing passes.
     *
     * @param dischargeM3PerS 0 to 1000 m3/s
     * @param downstreamHeadM level behind the weir above the crest, -100 to 100 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double drownedHead(double dischargeM3PerS, double downstreamHeadM) {
        requireHead("downstreamHeadM", downstreamHeadM);
        double free = head(dischargeM3PerS);
        if (downstreamHeadM <= 0) {
            return free;
        }
        if (dischargeM3PerS == 0) {
            return downstreamHeadM;
        }
        return new DrownedWeir(this, dischargeM3PerS, downstreamHeadM).upstreamHead(free);
    }

    /**
     * Ce. Of a narrow crest in a wide channel it falls with h/p; beyond the published h/p it is held, else it would come to
     * nothing over a crest near the floor.
     */
    private double share(WeirShape shape, double headM) {
        double ratio = headM / crestHeightM;
        return shape.alpha()
                + shape.beta() * (shape.beta() < 0 ? Math.min(ratio, PUBLISHED_HEAD_OVER_CREST.high()) : ratio);
    }

    /** The formula itself, for a head above zero. */
    double freeDischarge(double headM) {
        WeirShape shape = shape();
        double effective = headM + HEAD_CORRECTION_M;
        return coefficient(shape) * share(shape, headM) * effective * Math.sqrt(effective);
    }

    /** d ln Q / d h of the free discharge, 1/m. */
    double freeSlope(double headM) {
        WeirShape shape = shape();
        boolean held = shape.beta() < 0 && headM > PUBLISHED_HEAD_OVER_CREST.high() * crestHeightM;
        double slope = held ? 0 : shape.beta() / crestHeightM;
        return 1.5 / (headM + HEAD_CORRECTION_M) + slope / (shape.alpha() + slope * headM);
    }

    private double coefficient(WeirShape shape) {
        return 2.0 / 3 * Math.sqrt(2 * GRAVITY) * (widthM + shape.widthCorrectionM());
    }

    private WeirShape shape() {
        return WeirShape.of(widthM / channelWidthM);
    }

    private static void requireHead(String name, double headM) {
        Require.inRange(name, headM, -GREATEST_HEAD_M, GREATEST_HEAD_M, "m", "give the head over the crest in metres");
    }

    private static void requireDischarge(double dischargeM3PerS) {
        Require.inRange("dischargeM3PerS", dischargeM3PerS, 0, 1000, "m3/s", "give the flow over the weir, 0 or more");
    }
}
