package io.github.weirwise.diagnosis;

/**
 * How well this unit's amounts were forecast so far, and by how much its ranges are therefore widened or narrowed: quantile
 * tracking, the adaptive conformal rule of Gibbs and Candes (2021), started at no correction. It promises a long-run share, not
 * the next reading.
 */
final class Forecasts {
    /** How fast the width follows; a miss widens by four times what a hit narrows, so that four in five hold. */
    private static final double RATE = 0.07;

    private static final double MISSES = 0.2;
    private static final double OUTSIDE = MISSES / 2;
    private static final double LEAST = 0.75;
    private static final double MOST = 2.5;
    private static final int REMEMBERED = 20;

    /** A model's own doubt is never all of it: a journal starts with ranges this much wider. */
    private static final double START = 1.15;

    private double logWidth = Math.log(START);
    private int made;
    private int bits;

    /** All of it as values. */
    record Kept(double logWidth, int made, int bits) {}

    Forecasts() {}

    /** The forecasts that were kept. */
    Forecasts(Kept kept) {
        logWidth = kept.logWidth;
        made = kept.made;
        bits = kept.bits;
    }

    Kept kept() {
        return new Kept(logWidth, made, bits);
    }

    Forecasts copy() {
        return new Forecasts(kept());
    }

    void came(Mixture expected, double value) {
        double below = expected.told(width()).below(value);
        boolean held = below >= OUTSIDE && below <= 1 - OUTSIDE;
        logWidth += RATE * ((held ? 0 : 1) - MISSES);
        logWidth = Math.max(Math.log(LEAST), Math.min(Math.log(MOST), logWidth));
        bits = (bits << 1 | (held ? 1 : 0)) & (1 << REMEMBERED) - 1;
        made++;
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
