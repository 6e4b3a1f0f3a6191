package io.github.weirwise.diagnosis;

import io.github.weirwise.report.Range;
import java.util.Arrays;

/**
 * A mixture of normals for one number, such as the logarithm of the amount.
 *
 * @param weights adding up to 1
 * @param means of the parts
 * @param sds of the parts, above 0
 * @since 0.2
 */
public record Mixture(double[] weights, double[] means, double[] sds) {
    /** Of a hundred forecasts this many are overtaken by something unnamed; stated judgement. */
    private static final double UNNAMED = 0.06;

    private static final double UNNAMED_SD = 1.5;
    private static final int MOST_STEPS = 60;
    private static final double CLOSE = 1e-9;
    /** No share that can be asked for lies farther out, in standard deviations. */
    private static final double FARTHEST = 9;

    /** Share below a value, 0 to 1. */
    public double below(double value) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * Normal.below((value - means[i]) / sds[i]);
        }
        return sum;
    }

    /** Share between two values, 0 to 1. */
    public double between(double low, double high) {
        return Math.max(0, below(high) - below(low));
    }

    /** Mean. */
    public double mean() {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * means[i];
        }
        return sum;
    }

    /** Standard deviation of the whole. */
    public double sd() {
        double mean = mean();
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            double off = means[i] - mean;
            sum += weights[i] * (sds[i] * sds[i] + off * off);
        }
        return Math.sqrt(sum);
    }

    /** The value below which a share lies, 0 to 1 exclusive: Newton's steps, kept between bounds that close in. */
    public double quantile(double share) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < means.length; i++) {
            low = Math.min(low, means[i] - FARTHEST * sds[i]);
            high = Math.max(high, means[i] + FARTHEST * sds[i]);
        }
        double width = high - low;
        double at = Math.max(low, Math.min(high, mean()));
        for (int i = 0; i < MOST_STEPS && high - low > CLOSE * width; i++) {
            double below = 0;
            double density = 0;
            for (int k = 0; k < weights.length; k++) {
                double z = (at - means[k]) / sds[k];
                double bell = Normal.bell(z);
                below += weights[k] * Normal.below(z, bell);
                density += weights[k] * (bell / Normal.ROOT_2_PI) / sds[k];
            }
            double off = below - share;
            if (off < 0) {
                low = at;
            } else {
                high = at;
            }
            double next = at - off / density;
            double step = next - at;
            at = next > low && next < high ? next : 0.5 * (low + high);
            if (Math.abs(step) < CLOSE * width) {
                break;
            }
        }
        return at;
    }

    /** The range that holds 80 %. */
    public Range middle80() {
        return new Range(quantile(0.1), quantile(0.9));
    }

    /**
     * The same as it is told to a person: every part wider by a factor about its own mean, and a little room for something that no
     * branch has a name for.
     */
    public Mixture told(double factor) {
        int n = means.length;
        double[] shares = Arrays.copyOf(weights, n + 1);
        double[] centres = Arrays.copyOf(means, n + 1);
        double[] wider = Arrays.copyOf(sds, n + 1);
        for (int i = 0; i < n; i++) {
            shares[i] *= 1 - UNNAMED;
            wider[i] *= factor;
        }
        shares[n] = UNNAMED;
        centres[n] = mean();
        wider[n] = UNNAMED_SD;
        return new Mixture(shares, centres, wider);
    }
}
