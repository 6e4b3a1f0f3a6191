package io.github.weirwise.diagnosis;

import java.util.Arrays;

/**
 * Mean and covariance of a normal distribution over the state, changed in place: the mechanics of an extended Kalman filter with
 * scalar readings (Kalman 1960; Jazwinski 1970). A test holds it against a reference library.
 */
final class Moments {
    private static final int N = State.SIZE;
    /** Rows that are changed together: short loops over one row spend most of their time on starting. */
    private static final int FIVE = 5;
    /** Rows that are read together. */
    private static final int EIGHT = 8;

    private static final double LEAST_VARIANCE = 1e-8;

    private final double[] mean;
    /** Row by row: loops over one row compile to the machine's vector instructions. */
    private final double[][] cov;
    /** Where a gradient is not nought. */
    private final int[] at = new int[N];

    Moments() {
        mean = new double[N];
        cov = new double[N][N];
    }

    private Moments(double[] mean, double[][] cov) {
        this.mean = mean;
        this.cov = cov;
    }

    /**
     * All of it. The covariance is symmetric but for rounding, so most of its lower half is told as last digits off the upper.
     *
     * @param upper the upper half of the covariance, row by row
     * @param digits how many last digits each of the lower half is off, in the same order; {@value #FAR} for one that is farther off
     * @param far those, as they are
     */
    record Kept(double[] mean, double[] upper, byte[] digits, double[] far) {
        private static final byte FAR = Byte.MIN_VALUE;
    }

    /** The moments that were kept. */
    Moments(Kept kept) {
        this();
        System.arraycopy(kept.mean, 0, mean, 0, N);
        int at = 0;
        int lower = 0;
        int far = 0;
        for (int i = 0; i < N; i++) {
            cov[i][i] = kept.upper[at++];
            for (int j = i + 1; j < N; j++) {
                double value = kept.upper[at++];
                byte digits = kept.digits[lower++];
                cov[i][j] = value;
                cov[j][i] = digits == Kept.FAR
                        ? kept.far[far++]
                        : Double.longBitsToDouble(Double.doubleToRawLongBits(value) + digits);
            }
        }
    }

    Kept kept() {
        double[] upper = new double[N * (N + 1) / 2];
        byte[] digits = new byte[N * (N - 1) / 2];
        double[] far = new double[digits.length];
        int at = 0;
        int lower = 0;
        int most = 0;
        for (int i = 0; i < N; i++) {
            upper[at++] = cov[i][i];
            for (int j = i + 1; j < N; j++) {
                upper[at++] = cov[i][j];
                long off = Double.doubleToRawLongBits(cov[j][i]) - Double.doubleToRawLongBits(cov[i][j]);
                boolean near = Math.abs(off) <= Byte.MAX_VALUE;
                digits[lower++] = near ? (byte) off : Kept.FAR;
                if (!near) {
                    far[most++] = cov[j][i];
                }
            }
        }
        return new Kept(mean.clone(), upper, digits, Arrays.copyOf(far, most));
    }

    Moments copy() {
        double[][] rows = new double[N][];
        for (int i = 0; i < N; i++) {
            rows[i] = cov[i].clone();
        }
        return new Moments(mean.clone(), rows);
    }

    double[] mean() {
        return mean;
    }

    double mean(int i) {
        return mean[i];
    }

    double cov(int i, int j) {
        return cov[i][j];
    }

    double sd(int i) {
        return Math.sqrt(Math.max(LEAST_VARIANCE, cov(i, i)));
    }

    /** One component known anew, without ties to the others. */
    void set(int i, double value, double sd) {
        mean[i] = value;
        Arrays.fill(cov[i], 0);
        cov[i][i] = sd * sd;
        mirror(i);
    }

    void shift(int i, double by) {
        mean[i] += by;
    }

    void scale(int i, double by) {
        mean[i] *= by;
        double[] row = cov[i];
        double variance = row[i] * by * by;
        for (int j = 0; j < row.length; j++) {
            row[j] *= by;
        }
        row[i] = variance;
        mirror(i);
    }

    /** The covariance is symmetric: a row that was changed is its column as well. */
    private void mirror(int i) {
        double[] row = cov[i];
        for (int j = 0; j < N; j++) {
            cov[j][i] = row[j];
        }
    }

    void noise(int i, double variance) {
        cov[i][i] += variance;
    }

    /** Adds to one component what a logarithmic pace makes of it: {@code x += grown}, with d(grown)/d(pace) = grown. */
    void grow(int i, int pace, double grown) {
        mean[i] += grown;
        double[] row = cov[i];
        double[] paces = cov[pace];
        double variance = row[i] + 2 * grown * row[pace] + grown * grown * paces[pace];
        for (int j = 0; j < row.length; j++) {
            row[j] += grown * paces[j];
        }
        row[i] = variance;
        mirror(i);
    }

    void atMost(int i, double most) {
        mean[i] = Math.min(most, mean[i]);
    }

    /** Holds a mean within limits. */
    void hold(int i, double least, double most) {
        mean[i] = Math.max(least, Math.min(most, mean[i]));
    }

    /** Covariance of one component with all. */
    void row(int i, double[] out) {
        System.arraycopy(cov[i], 0, out, 0, N);
    }

    /**
     * Covariance of something with each component, by how it goes with them.
     *
     * @param gradient mostly noughts
     * @param out filled with the covariances
     * @return its variance
     */
    double project(double[] gradient, double[] out) {
        int n = 0;
        for (int i = 0; i < N; i++) {
            if (gradient[i] != 0) {
                at[n++] = i;
            }
        }
        Arrays.fill(out, 0);
        int k = 0;
        for (; k + EIGHT <= n; k += EIGHT) {
            addEight(k, gradient, out);
        }
        for (; k < n; k++) {
            double by = gradient[at[k]];
            double[] row = cov[at[k]];
            for (int j = 0; j < N; j++) {
                out[j] += by * row[j];
            }
        }
        double variance = 0;
        for (k = 0; k < n; k++) {
            variance += gradient[at[k]] * out[at[k]];
        }
        return variance;
    }

    private void addEight(int k, double[] gradient, double[] out) {
        double g0 = gradient[at[k]];
        double g1 = gradient[at[k + 1]];
        double g2 = gradient[at[k + 2]];
        double g3 = gradient[at[k + 3]];
        double g4 = gradient[at[k + 4]];
        double g5 = gradient[at[k + 5]];
        double g6 = gradient[at[k + 6]];
        double g7 = gradient[at[k + 7]];
        double[] row0 = cov[at[k]];
        double[] row1 = cov[at[k + 1]];
        double[] row2 = cov[at[k + 2]];
        double[] row3 = cov[at[k + 3]];
        double[] row4 = cov[at[k + 4]];
        double[] row5 = cov[at[k + 5]];
        double[] row6 = cov[at[k + 6]];
        double[] row7 = cov[at[k + 7]];
        for (int j = 0; j < N; j++) {
            double sum = out[j] + g0 * row0[j] + g1 * row1[j] + g2 * row2[j] + g3 * row3[j];
            out[j] = sum + g4 * row4[j] + g5 * row5[j] + g6 * row6[j] + g7 * row7[j];
        }
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < N; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /**
     * Takes in a scalar whose covariance with the state is {@code with} and whose variance is {@code total}: the mean goes by
     * {@code with x innovation / total}, and of the covariance the share {@code kept} of what a sharp reading would take is left.
     */
    void update(double[] with, double total, double innovation, double taken) {
        double gain = innovation / total;
        for (int i = 0; i < N; i++) {
            mean[i] += with[i] * gain;
        }
        double factor = taken / total;
        int i = 0;
        for (; i + FIVE <= N; i += FIVE) {
            double f0 = with[i] * factor;
            double f1 = with[i + 1] * factor;
            double f2 = with[i + 2] * factor;
            double f3 = with[i + 3] * factor;
            double f4 = with[i + 4] * factor;
            double[] row0 = cov[i];
            double[] row1 = cov[i + 1];
            double[] row2 = cov[i + 2];
            double[] row3 = cov[i + 3];
            double[] row4 = cov[i + 4];
            for (int j = 0; j < N; j++) {
                double w = with[j];
                row0[j] -= f0 * w;
                row1[j] -= f1 * w;
                row2[j] -= f2 * w;
                row3[j] -= f3 * w;
                row4[j] -= f4 * w;
            }
        }
        for (; i < N; i++) {
            double f = with[i] * factor;
            double[] row = cov[i];
            for (int j = 0; j < N; j++) {
                row[j] -= f * with[j];
            }
        }
    }

    /** A part is not cleaner than clean: a mean below zero is drawn up to it, along the line of what belongs together. */
    void notBelowZero(int i) {
        double below = mean[i];
        double[] row = cov[i];
        double variance = row[i];
        if (below < 0 && variance > 0) {
            for (int j = 0; j < N; j++) {
                mean[j] -= row[j] / variance * below;
            }
            mean[i] = 0;
        }
    }
}
