package io.github.weirwise.diagnosis;

import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Sum;

/**
 * One branch a day on, cut down to what the amount hangs on, so that a move, a service or the outcome of a look is a handful of
 * operations. Immutable.
 *
 * @since 0.2
 */
public final class Prospect {
    private final double weight;
    private final double raw;
    private final double variance;
    private final double logSlope;
    private final double slopeVariance;
    private final double slopeWith;
    private final double[] perSize;
    private final double[] sizes;
    private final double[] sizeCov;
    private final double[] sizeWith;
    private final double laterLog;
    private final double laterVariance;

    private Prospect(
            double weight,
            double raw,
            double variance,
            double logSlope,
            double slopeVariance,
            double slopeWith,
            double[] perSize,
            double[] sizes,
            double[] sizeCov,
            double[] sizeWith,
            double laterLog,
            double laterVariance) {
        this.weight = weight;
        this.raw = raw;
        this.variance = variance;
        this.logSlope = logSlope;
        this.slopeVariance = slopeVariance;
        this.slopeWith = slopeWith;
        this.perSize = perSize;
        this.sizes = sizes;
        this.sizeCov = sizeCov;
        this.sizeWith = sizeWith;
        this.laterLog = laterLog;
        this.laterVariance = laterVariance;
    }

    static Prospect of(double weight, Moments moments, SumModel model, double laterDays) {
        double[] gradient = new double[State.SIZE];
        double[] with = new double[State.SIZE];
        double raw = model.rawAmount(moments.mean(), gradient);
        moments.times(gradient, with);
        double variance = Moments.dot(gradient, with);
        int n = State.PART_COUNT;
        double[] perSize = new double[n];
        double[] sizes = new double[n];
        double[] cov = new double[n * n];
        double[] sizeWith = new double[n];
        for (int i = 0; i < n; i++) {
            int at = State.PARTS + i;
            perSize[i] = gradient[at];
            sizes[i] = moments.mean(at);
            for (int j = 0; j < n; j++) {
                cov[i * n + j] = moments.cov(at, State.PARTS + j);
            }
            sizeWith[i] = with[at];
        }
        double gone = 1 - Math.exp(-laterDays / Prior.PASSING_DAYS);
        double passing = moments.mean(State.PASSING);
        double passingVariance = moments.cov(State.PASSING, State.PASSING);
        double shrunk = (1 - gone) * (1 - gone) - 1;
        double usual = Prior.PASSING_USUAL_SD * Prior.PASSING_USUAL_SD * -shrunk;
        double later = Prior.FOAM_DRIFT * Prior.FOAM_DRIFT * laterDays + passingVariance * shrunk + usual;
        return new Prospect(
                weight,
                raw,
                variance,
                moments.mean(State.SLOPE),
                moments.cov(State.SLOPE, State.SLOPE),
                with[State.SLOPE],
                perSize,
                sizes,
                cov,
                sizeWith,
                -gone * passing,
                later);
    }

    /** What a look will show in this branch: its mean, its variance and how it goes with everything else. */
    static final class Foretold {
        final double mean;
        final double variance;
        private final double amountWith;
        private final double slopeWith;
        private final double[] sizeWith;

        private Foretold(double mean, double variance, double amountWith, double slopeWith, double[] sizeWith) {
            this.mean = mean;
            this.variance = variance;
            this.amountWith = amountWith;
            this.slopeWith = slopeWith;
            this.sizeWith = sizeWith;
        }

        static Foretold sum(Moments moments, SumModel model, Sum sum, double factor, double sd) {
            double[] gradient = new double[State.SIZE];
            double mean = factor * model.value(sum, moments.mean(), gradient);
            for (int i = 0; i < State.SIZE; i++) {
                gradient[i] *= factor;
            }
            return of(moments, model, mean, gradient, sd);
        }

        static Foretold part(Moments moments, SumModel model, Part part, double sd) {
            double[] gradient = new double[State.SIZE];
            gradient[State.of(part)] = 1;
            return of(moments, model, moments.mean(State.of(part)), gradient, sd);
        }

        static Foretold passing(Moments moments, SumModel model, double sd) {
            double[] gradient = new double[State.SIZE];
            gradient[State.PASSING] = 1;
            return of(moments, model, moments.mean(State.PASSING), gradient, sd);
        }

        private static Foretold of(Moments moments, SumModel model, double mean, double[] gradient, double sd) {
            double[] with = new double[State.SIZE];
            moments.times(gradient, with);
            double[] amount = new double[State.SIZE];
            model.rawAmount(moments.mean(), amount);
            double[] sizeWith = new double[State.PART_COUNT];
            System.arraycopy(with, State.PARTS, sizeWith, 0, sizeWith.length);
            return new Foretold(
                    mean,
                    Math.max(0, Moments.dot(gradient, with)) + sd * sd,
                    Moments.dot(amount, with),
                    with[State.SLOPE],
                    sizeWith);
        }
    }

    /** This branch after a look showed {@code value}; its weight goes by how well it foretold that. */
    Prospect after(Foretold look, double value) {
        double off = value - look.mean;
        double gain = off / look.variance;
        double z = off / Math.sqrt(look.variance);
        double like = 0.96 * Normal.density(z) / Math.sqrt(look.variance) + 0.04 * 0.2 / Math.sqrt(look.variance);
        int n = sizes.length;
        double[] newSizes = new double[n];
        double[] newCov = sizeCov.clone();
        double[] newWith = new double[n];
        for (int i = 0; i < n; i++) {
            double w = look.sizeWith[i];
            newSizes[i] = Math.max(0, sizes[i] + w * gain);
            for (int j = 0; j < n; j++) {
                newCov[i * n + j] -= w * look.sizeWith[j] / look.variance;
            }
            newCov[i * n + i] = Math.max(1e-4, newCov[i * n + i]);
            newWith[i] = sizeWith[i] - w * look.amountWith / look.variance;
        }
        return new Prospect(
                weight * like,
                raw + look.amountWith * gain,
                Math.max(1e-3, variance - look.amountWith * look.amountWith / look.variance),
                logSlope + look.slopeWith * gain,
                slopeVariance - look.slopeWith * look.slopeWith / look.variance,
                slopeWith - look.slopeWith * look.amountWith / look.variance,
                perSize,
                newSizes,
                newCov,
                newWith,
                laterLog,
                laterVariance);
    }

    Prospect withWeight(double other) {
        return new Prospect(
                other,
                raw,
                variance,
                logSlope,
                slopeVariance,
                slopeWith,
                perSize,
                sizes,
                sizeCov,
                sizeWith,
                laterLog,
                laterVariance);
    }

    /** Share of the belief that this branch has, 0 to 1. */
    public double weight() {
        return weight;
    }

    /** Slope of the amount in the weir, as a logarithm a millimetre. */
    public double slopePerMm() {
        return Math.exp(logSlope);
    }

    /** Standard deviation of the slope's logarithm. */
    public double slopeLogSd() {
        return Math.sqrt(Math.max(0, slopeVariance));
    }

    /** Mean and standard deviation of the amount's logarithm a day on, after a move and services. */
    void amount(double mm, int[] serviced, boolean later, double[] out) {
        double slope = Math.exp(logSlope);
        double step = slope * mm;
        double mean = raw + step;
        double var = variance + 2 * step * slopeWith + step * step * slopeVariance;
        int n = sizes.length;
        for (int i : serviced) {
            double per = perSize[i];
            mean -= per * (sizes[i] - SERVICED_SIZE);
            var += -2 * per * sizeWith[i] + per * per * SERVICED_SIZE * SERVICED_SIZE;
            for (int j : serviced) {
                var += per * perSize[j] * sizeCov[i * n + j];
            }
        }
        if (later) {
            mean += laterLog;
            var += laterVariance;
        }
        out[0] = SumModel.bent(mean);
        out[1] = Math.max(LEAST_SD, SumModel.bentSd(mean, Math.sqrt(Math.max(LEAST_VARIANCE, var))));
    }

    /** How many moves of so many millimetres are still needed to an aimed amount after a move and services; 0 when one reaches it. */
    double movesAway(double mm, int[] serviced, double aimLog, double stepMm) {
        double slope = Math.exp(logSlope);
        double mean = raw + slope * mm;
        for (int i : serviced) {
            mean -= perSize[i] * (sizes[i] - SERVICED_SIZE);
        }
        return Math.max(0, Math.abs(mean - aimLog) / (slope * stepMm) - 1);
    }

    private static final double SERVICED_SIZE = 0.03;
    private static final double LEAST_VARIANCE = 0.02;
    private static final double LEAST_SD = 0.12;

    /** Chance that a part's size is over a limit after it has grown by so much. */
    double chanceOver(int part, double limit, double grown) {
        return 1
                - Normal.below(
                        (limit - sizes[part] - grown) / Math.sqrt(Math.max(1e-6, sizeCov[part * sizes.length + part])));
    }
}
