package io.github.weirwise.diagnosis;

/**
 * One unknown that shifts many readings alike, such as the bias of a reader's eye: normal before anything is read. Drawn near
 * where the readings ask for it instead of blindly, with the correction that takes the lean back, so that few draws are wasted.
 */
final class SharedShift {
    /** A reading this many of its spreads off the others is taken for a misreading when the middle is sought. */
    private static final double FAR = 3;

    private final double priorSpread;
    private final double[] residuals;
    private final double[] precisions;
    private final double[] spreads;
    private int count;
    private double logCorrection;

    /**
     * @param priorSpread standard deviation around 0 before anything is read, above 0
     * @param most how many readings may be added
     */
    SharedShift(double priorSpread, int most) {
        this.priorSpread = priorSpread;
        residuals = new double[most];
        precisions = new double[most];
        spreads = new double[most];
    }

    /** Starts again without any reading. */
    void forget() {
        count = 0;
    }

    /**
     * What a reading shows beyond what is expected without any shift.
     *
     * @param spread its standard deviation
     * @param trust exponent on its likelihood, 0 to 1
     */
    void add(double residual, double spread, double trust) {
        residuals[count] = residual;
        precisions[count] = trust / (spread * spread);
        spreads[count] = spread;
        count++;
    }

    /** The shift that a standard normal number stands for. */
    double draw(double normal) {
        if (count == 0) {
            logCorrection = 0;
            return priorSpread * normal;
        }
        double precision = 1 / (priorSpread * priorSpread);
        double sum = 0;
        for (int i = 0; i < count; i++) {
            precision += precisions[i];
            sum += precisions[i] * residuals[i];
        }
        double middle = sum / precision;
        for (int i = 0; i < count; i++) {
            if (Math.abs(residuals[i] - middle) > FAR * spreads[i]) {
                precision -= precisions[i];
                sum -= precisions[i] * residuals[i];
            }
        }
        double shift = sum / precision + normal / Math.sqrt(precision);
        double z = shift / priorSpread;
        logCorrection = 0.5 * (normal * normal - z * z) - 0.5 * Math.log(precision * priorSpread * priorSpread);
        return shift;
    }

    /** Logarithm of prior over drawn density at the newest draw; at most half the square of its number. */
    double logCorrection() {
        return logCorrection;
    }
}
