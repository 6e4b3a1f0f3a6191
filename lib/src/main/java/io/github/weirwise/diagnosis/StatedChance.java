package io.github.weirwise.diagnosis;

/**
 * The chance that is stated for the likeliest cause, from its share among the possibilities.
 *
 * <p>The shares come from a few hundred possibilities and from a law that is not the tank's own. Of the many faults the one that
 * luck favours comes out on top, so a single belief's share of a fault is too sure; what is left for a sound unit is then too
 * little, so its share is too modest. Where several beliefs are taken together luck has less of a say. The tables were read off
 * tuning tanks of the trial (2,400 tanks), never off those that are reported; they are ours, not published.
 */
enum StatedChance {
    /** A part at fault, by a single belief. */
    FAULT(
            new double[] {0, 0.24, 0.36, 0.46, 0.58, 0.67, 0.78, 0.90, 0.97, 1},
            new double[] {0, 0.19, 0.24, 0.29, 0.35, 0.40, 0.46, 0.61, 0.78, 0.92}),
    /** Nothing but where the weir stands, if that, by a single belief. */
    SOUND(
            new double[] {0, 0.30, 0.41, 0.59, 0.69, 0.78, 0.90, 1},
            new double[] {0, 0.44, 0.62, 0.855, 0.92, 0.957, 0.985, 0.992}),
    /** What passes by itself, and the load, by a single belief. */
    OTHER(new double[] {0, 0.35, 0.50, 0.65, 0.80, 0.92, 1}, new double[] {0, 0.33, 0.52, 0.66, 0.82, 0.89, 0.95}),
    /** Any cause, by several beliefs together. */
    POOLED(
            new double[] {0, 0.30, 0.42, 0.52, 0.62, 0.71, 0.78, 0.87, 1},
            new double[] {0, 0.38, 0.43, 0.56, 0.70, 0.84, 0.885, 0.955, 0.98});

    private final double[] share;
    private final double[] came;

    StatedChance(double[] share, double[] came) {
        this.share = share;
        this.came = came;
    }

    /**
     * The table for a cause.
     *
     * @param pooled whether several beliefs were taken together
     */
    static StatedChance forCause(Cause cause, boolean pooled) {
        if (pooled) {
            return POOLED;
        }
        return switch (cause) {
            case NOTHING_WRONG, WEIR_TOO_LOW, WEIR_TOO_HIGH -> SOUND;
            default -> cause.serviceable() ? FAULT : OTHER;
        };
    }

    /**
     * The chance to state.
     *
     * @param among share of the possibilities, 0 to 1
     * @return 0 to 0.992, rising with the share
     */
    double of(double among) {
        int cell = 0;
        while (cell < share.length - 2 && among > share[cell + 1]) {
            cell++;
        }
        double along = (among - share[cell]) / (share[cell + 1] - share[cell]);
        return came[cell] + along * (came[cell + 1] - came[cell]);
    }
}
