package io.github.weirwise.diagnosis;

/**
 * One branch a day on, cut down to what the amount hangs on, so that a move, a service or the outcome of a look is a handful of
 * operations. Immutable.
 *
 * @since 0.2
 */
public final class Prospect {
    private static final double SERVICED_SIZE = 0.03;
    private static final double LEAST_VARIANCE = 0.02;
    private static final double LEAST_SD = 0.12;
    private static final double LEAST_AMOUNT_VARIANCE = 1e-3;
    private static final double LEAST_SIZE_VARIANCE = 1e-4;

    /** Share of looks that show anything, whatever is there, and how likely each outcome then is. */
    private static final double GROSS_SHARE = 0.04;

    private static final double GROSS_DENSITY = 0.2;

    private final double weight;
    private final double raw;
    private final double logSlope;
    private final double slope;
    private final double[] sizes;
    private final Spread spread;
    private final Fixed fixed;

    /**
     * How far off the means may be, and together with what.
     *
     * @param amount variance of the amount before it is bent
     * @param slope variance of the slope's logarithm
     * @param slopeWith covariance of slope and amount
     * @param sizes covariance of the sizes of the parts, row by row
     * @param sizesWith covariance of each size with the amount
     */
    private record Spread(double amount, double slope, double slopeWith, double[] sizes, double[] sizesWith) {
        /** What is left of it after a look, whatever that shows. */
        Spread after(Foretold look) {
            int n = sizesWith.length;
            double[] newSizes = sizes.clone();
            double[] newWith = new double[n];
            for (int i = 0; i < n; i++) {
                double w = look.sizesWith[i];
                for (int j = 0; j < n; j++) {
                    newSizes[i * n + j] -= w * look.sizesWith[j] / look.variance;
                }
                newSizes[i * n + i] = Math.max(LEAST_SIZE_VARIANCE, newSizes[i * n + i]);
                newWith[i] = sizesWith[i] - w * look.amountWith / look.variance;
            }
            return new Spread(
                    Math.max(LEAST_AMOUNT_VARIANCE, amount - look.amountWith * look.amountWith / look.variance),
                    slope - look.slopeWith * look.slopeWith / look.variance,
                    slopeWith - look.slopeWith * look.amountWith / look.variance,
                    newSizes,
                    newWith);
        }
    }

    /**
     * What no look changes.
     *
     * @param perSize what one of each part's size does to the amount
     * @param laterLog what some days more do to the amount
     * @param laterVariance and to its variance
     */
    private record Fixed(double[] perSize, double laterLog, double laterVariance) {}

    private Prospect(double weight, double raw, double logSlope, double[] sizes, Spread spread, Fixed fixed) {
        this.weight = weight;
        this.raw = raw;
        this.logSlope = logSlope;
        this.slope = Math.exp(logSlope);
        this.sizes = sizes;
        this.spread = spread;
        this.fixed = fixed;
    }

    static Prospect of(double weight, Moments moments, SumModel model, double laterDays) {
        double[] gradient = new double[State.SIZE];
        double[] with = new double[State.SIZE];
        double raw = model.rawAmount(moments.mean(), gradient);
        moments.times(gradient, with);
        int n = State.PART_COUNT;
        double[] cov = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                cov[i * n + j] = moments.cov(State.PARTS + i, State.PARTS + j);
            }
        }
        Spread spread = new Spread(
                Moments.dot(gradient, with),
                moments.cov(State.SLOPE, State.SLOPE),
                with[State.SLOPE],
                cov,
                State.parts(with));
        double gone = 1 - Math.exp(-laterDays / Prior.PASSING_DAYS);
        double passing = moments.mean(State.PASSING);
        double passingVariance = moments.cov(State.PASSING, State.PASSING);
        double shrunk = (1 - gone) * (1 - gone) - 1;
        double usual = Prior.PASSING_USUAL_SD * Prior.PASSING_USUAL_SD * -shrunk;
        double later = Prior.FOAM_DRIFT * Prior.FOAM_DRIFT * laterDays + passingVariance * shrunk + usual;
        return new Prospect(
                weight,
                raw,
                moments.mean(State.SLOPE),
                State.parts(moments.mean()),
                spread,
                new Fixed(State.parts(gradient), -gone * passing, later));
    }

    /** What a look will show in one branch: its mean, its variance and how it goes with everything else. */
    static final class Foretold {
        private final Prospect branch;
        private final double mean;
        private final double variance;
        private final double amountWith;
        private final double slopeWith;
        private final double[] sizesWith;
        private final Spread left;

        /**
         * @param branch the branch
         * @param moments its moments
         * @param mean what the look will show on average
         * @param gradient how that goes with each component
         * @param sd scatter of the look itself
         */
        Foretold(Prospect branch, Moments moments, SumModel model, double mean, double[] gradient, double sd) {
            double[] with = new double[State.SIZE];
            moments.times(gradient, with);
            double[] amount = new double[State.SIZE];
            model.rawAmount(moments.mean(), amount);
            this.branch = branch;
            this.mean = mean;
            this.variance = Math.max(0, Moments.dot(gradient, with)) + sd * sd;
            this.amountWith = Moments.dot(amount, with);
            this.slopeWith = with[State.SLOPE];
            this.sizesWith = State.parts(with);
            this.left = branch.spread.after(this);
        }

        double weight() {
            return branch.weight;
        }

        double mean() {
            return mean;
        }

        double variance() {
            return variance;
        }

        /** The weight of the branch, by how well it foretold what the look showed; not yet shared out. */
        double weightAfter(double value) {
            double z = (value - mean) / Math.sqrt(variance);
            double like = (1 - GROSS_SHARE) * Normal.density(z) / Math.sqrt(variance)
                    + GROSS_SHARE * GROSS_DENSITY / Math.sqrt(variance);
            return branch.weight * like;
        }

        /** The branch after the look showed {@code value}, with a weight. */
        Prospect after(double value, double weight) {
            double gain = (value - mean) / variance;
            double[] newSizes = new double[sizesWith.length];
            for (int i = 0; i < newSizes.length; i++) {
                newSizes[i] = Math.max(0, branch.sizes[i] + sizesWith[i] * gain);
            }
            return new Prospect(
                    weight,
                    branch.raw + amountWith * gain,
                    branch.logSlope + slopeWith * gain,
                    newSizes,
                    left,
                    branch.fixed);
        }
    }

    /** Share of the belief that this branch has, 0 to 1. */
    public double weight() {
        return weight;
    }

    /** Slope of the amount in the weir, as a logarithm a millimetre. */
    public double slopePerMm() {
        return slope;
    }

    /** Standard deviation of the slope's logarithm. */
    public double slopeLogSd() {
        return Math.sqrt(Math.max(0, spread.slope));
    }

    /** Mean and standard deviation of the amount's logarithm a day on, after a move and services. */
    void amount(double mm, int[] serviced, boolean later, double[] out) {
        double step = slope * mm;
        double mean = raw + step;
        double var = spread.amount + 2 * step * spread.slopeWith + step * step * spread.slope;
        int n = sizes.length;
        double[] perSize = fixed.perSize;
        for (int i : serviced) {
            double per = perSize[i];
            mean -= per * (sizes[i] - SERVICED_SIZE);
            var += -2 * per * spread.sizesWith[i] + per * per * SERVICED_SIZE * SERVICED_SIZE;
            for (int j : serviced) {
                var += per * perSize[j] * spread.sizes[i * n + j];
            }
        }
        if (later) {
            mean += fixed.laterLog;
            var += fixed.laterVariance;
        }
        out[0] = SumModel.bent(mean);
        out[1] = Math.max(LEAST_SD, SumModel.bentSd(mean, Math.sqrt(Math.max(LEAST_VARIANCE, var))));
    }

    /** How many moves of so many millimetres are still needed to an aimed amount after a move and services; 0 when one reaches it. */
    double movesAway(double mm, int[] serviced, double aimLog, double stepMm) {
        double mean = raw + slope * mm;
        for (int i : serviced) {
            mean -= fixed.perSize[i] * (sizes[i] - SERVICED_SIZE);
        }
        return Math.max(0, Math.abs(mean - aimLog) / (slope * stepMm) - 1);
    }

    /** Chance that a part's size is over a limit after it has grown by so much. */
    double chanceOver(int part, double limit, double grown) {
        double sd = Math.sqrt(Math.max(1e-6, spread.sizes[part * sizes.length + part]));
        return 1 - Normal.below((limit - sizes[part] - grown) / sd);
    }
}
