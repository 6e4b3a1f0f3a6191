package io.github.weirwise.diagnosis;

/**
 * The chance that is stated for the likeliest cause, from its share among the possibilities.
 *
 * <p>The shares come from a few hundred possibilities and from a law that is not the tank's own: middling shares turn out
 * too modest, shares near one too sure. The table was read off tuning tanks of the trial (1,000 tanks), never off
 * those that are reported; it is ours, not published.
 */
final class StatedChance {
    private static final double[] SHARE = {0, 0.40, 0.57, 0.69, 0.77, 0.84, 0.90, 0.97, 0.995, 1};
    private static final double[] CAME = {0, 0.475, 0.69, 0.845, 0.91, 0.94, 0.953, 0.963, 0.972, 0.983};

    private StatedChance() {}

    /**
     * The chance to state.
     *
     * @param share of the possibilities, 0 to 1
     * @return 0 to 0.983, rising with the share
     */
    static double of(double share) {
        int cell = 0;
        while (cell < SHARE.length - 2 && share > SHARE[cell + 1]) {
            cell++;
        }
        double along = (share - SHARE[cell]) / (SHARE[cell + 1] - SHARE[cell]);
        return CAME[cell] + along * (CAME[cell + 1] - CAME[cell]);
    }
}
