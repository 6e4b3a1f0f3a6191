package io.github.weirwise.diagnosis;

import org.hipparchus.special.Erf;

/**
 * Quantiles of the standard normal law, from a table read in straight lines: to 0.003 between the 0.1 % quantiles, where
 * all that matters lies.
 */
final class NormalTable {
    private static final int CELLS = 2048;
    private static final double[] QUANTILES = table();

    private NormalTable() {}

    private static double[] table() {
        double[] quantiles = new double[CELLS + 1];
        for (int i = 1; i < CELLS; i++) {
            quantiles[i] = Math.sqrt(2) * Erf.erfInv(2.0 * i / CELLS - 1);
        }
        quantiles[0] = 1.1 * quantiles[1];
        quantiles[CELLS] = 1.1 * quantiles[CELLS - 1];
        return quantiles;
    }

    /** The number below which a standard normal number lies with a given chance, above 0 and below 1. */
    static double quantile(double chance) {
        double place = chance * CELLS;
        int cell = (int) place;
        return QUANTILES[cell] + (place - cell) * (QUANTILES[cell + 1] - QUANTILES[cell]);
    }
}
