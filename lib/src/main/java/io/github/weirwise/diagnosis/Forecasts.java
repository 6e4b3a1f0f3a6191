package io.github.weirwise.diagnosis;

/**
 * How well this unit's amounts were forecast so far, and by how much its ranges are therefore widened or narrowed: quantile
 * tracking, the adaptive conformal rule of Gibbs and Candes (2021), started at no correction. It promises a long-run share, not
 * the next reading.
 *
 * @param logWidth logarithm of the correction
 * @param made how many were made
 * @param bits of the newest ones, 1 for each that held
 */
record Forecasts(double logWidth, int made, int bits) {
    /** How fast the width follows; a miss widens by four times what a hit narrows, so that four in five hold. */
    private static final double RATE = 0.1;

    private static final double MISSES = 0.2;
    private static final double OUTSIDE = MISSES / 2;
    private static final double LEAST = 0.5;
    private static final double MOST = 2.5;
    private static final int REMEMBERED = 20;

    /** A model's own doubt is never all of it: a journal starts with ranges this much wider. */
    private static final double START = 1.15;

    static final Forecasts NONE = new Forecasts(Math.log(START), 0, 0);

    /** After one more. */
    Forecasts came(Mixture expected, double value) {
        double below = expected.told(width()).below(value);
        boolean held = below >= OUTSIDE && below <= 1 - OUTSIDE;
        double width = logWidth + RATE * ((held ? 0 : 1) - MISSES);
        return new Forecasts(
                Math.max(Math.log(LEAST), Math.min(Math.log(MOST), width)),
                made + 1,
                (bits << 1 | (held ? 1 : 0)) & (1 << REMEMBERED) - 1);
    }

    double width() {
        return Math.exp(logWidth);
    }

    /** How many of the newest forecasts are remembered, at most {@value #REMEMBERED}. */
    int remembered() {
        return Math.min(made, REMEMBERED);
    }

    int held() {
        return Integer.bitCount(bits);
    }
}
