package io.github.weirwise.diagnosis;

/**
 * Log-likelihood of a measured number by its offset from what was expected: normal with a spread, or a misreading spread
 * evenly over a width, whichever is likelier. The sum of both would differ by at most a factor of 2 where they cross, and
 * would cost a logarithm for every reading.
 */
final class Bell {
    /** Share of readings that are simply wrong. */
    static final double MISREAD = 0.04;

    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    private final double precision;
    private final double peak;
    private final double misread;

    /**
     * @param spread standard deviation of an honest reading, above 0
     * @param width over which a misreading may lie
     */
    Bell(double spread, double width) {
        precision = 0.5 / (spread * spread);
        peak = -Math.log(spread * ROOT_TWO_PI);
        misread = Math.log(MISREAD / width);
    }

    double log(double offset) {
        return Math.max(peak - precision * offset * offset, misread);
    }

    /** The greatest value of {@link #log}. */
    double peak() {
        return peak;
    }
}
