package io.github.weirwise.internal.physics.hydraulics;

/**
 * Coefficients of a thin-plate rectangular weir for a ratio of crest width to channel width, by the tables of ISO 1438
 * (Kindsvater &amp; Carter), interpolated linearly; from memory, alpha and beta agree with the US table within 0.3 %.
 *
 * @param alpha constant part of the discharge coefficient
 * @param beta part that grows with head over crest height
 * @param widthCorrectionM kb, m
 */
record WeirShape(double alpha, double beta, double widthCorrectionM) {
    private static final WeirShape FULL_WIDTH = new WeirShape(0.602, 0.075, -0.0009);

    private static final double[] COEFFICIENT_RATIO = {0, 0.2, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1};
    private static final double[] ALPHA = {0.587, 0.589, 0.591, 0.592, 0.593, 0.594, 0.596, 0.598, 0.602};
    private static final double[] BETA = {-0.0023, -0.0018, 0.0058, 0.011, 0.018, 0.030, 0.045, 0.064, 0.075};
    private static final double[] WIDTH_RATIO = {0, 0.2, 0.4, 0.6, 0.8, 1};
    private static final double[] WIDTH_CORRECTION_M = {0.0024, 0.0024, 0.0027, 0.0036, 0.0042, -0.0009};
    private static final double[] UNCERTAIN_HEAD_M = {0, 0.005, 0.010, 0.015, 0.025, 0.030};
    private static final double[] UNCERTAIN_SHARE = {0.40, 0.30, 0.20, 0.125, 0.06, 0.03};

    static WeirShape of(double widthRatio) {
        if (widthRatio >= 1) {
            return FULL_WIDTH;
        }
        return new WeirShape(
                linear(COEFFICIENT_RATIO, ALPHA, widthRatio),
                linear(COEFFICIENT_RATIO, BETA, widthRatio),
                linear(WIDTH_RATIO, WIDTH_CORRECTION_M, widthRatio));
    }

    /** Relative uncertainty of the discharge at a head; engineering judgement. */
    static double dischargeUncertainty(double headM) {
        return linear(UNCERTAIN_HEAD_M, UNCERTAIN_SHARE, headM);
    }

    private static double linear(double[] x, double[] y, double at) {
        int last = x.length - 1;
        if (at >= x[last]) {
            return y[last];
        }
        int i = 1;
        while (at > x[i]) {
            i++;
        }
        return y[i - 1] + (y[i] - y[i - 1]) * (at - x[i - 1]) / (x[i] - x[i - 1]);
    }
}
