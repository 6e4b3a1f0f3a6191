package io.github.weirwise.diagnosis;

/**
 * One branch a day on, cut down to what the amount hangs on, so that a move, a service or the outcome of a look is a handful of
 * operations. Immutable.
 */
final class Prospect {
    private static final double SERVICED_SIZE = 0.03;
    private static final double LEAST_VARIANCE = 0.02;
    private static final double LEAST_SD = 0.12;
    private static final double LEAST_AMOUNT_VARIANCE = 1e-3;
    private static final double LEAST_SIZE_VARIANCE = 1e-4;
    private static final double LEAST_SHOWN = 1e-6;

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
     * @param sizesWith covariance of each part's size with the amount
     * @param sizeSds standard deviation of each size
     * @param look what was looked at; null when nothing was
     */
    private record Spread(
            double amount, double slope, double slopeWith, double[] sizesWith, double[] sizeSds, Foretold look) {
        /** What is left of it after a look, whatever that shows. */
        Spread after(Foretold seen, Moments before) {
            double[] newWith = new double[sizesWith.length];
            for (int i = 0; i < newWith.length; i++) {
                newWith[i] = sizesWith[i] - seen.sizesWith[i] * seen.amountWith / seen.variance;
            }
            return new Spread(
                    Math.max(LEAST_AMOUNT_VARIANCE, amount - seen.amountWith * seen.amountWith / seen.variance),
                    slope - seen.slopeWith * seen.slopeWith / seen.variance,
                    slopeWith - seen.slopeWith * seen.amountWith / seen.variance,
                    newWith,
                    sizeSds(before, seen),
                    seen);
        }

        /** Covariance of two sizes after a look; null for none. */
        static double sizes(Moments before, Foretold look, int i, int j) {
            double size = before.cov(State.PARTS + i, State.PARTS + j);
            if (look == null) {
                return size;
            }
            double left = size - look.sizesWith[i] * look.sizesWith[j] / look.variance;
            return i == j ? Math.max(LEAST_SIZE_VARIANCE, left) : left;
        }

        static double[] sizeSds(Moments before, Foretold look) {
            double[] sds = new double[State.PART_COUNT];
            for (int i = 0; i < sds.length; i++) {
                sds[i] = Math.sqrt(Math.max(LEAST_SHOWN, sizes(before, look, i, i)));
            }
            return sds;
        }
    }

    /**
     * What no look changes.
     *
     * @param moments of the branch
     * @param gradient what one of each component does to the amount before it is bent
     * @param laterLog what some days more do to the amount
     * @param laterVariance and to its variance
     */
    private record Fixed(Moments moments, double[] gradient, double laterLog, double laterVariance) {
        /** What one of a part's size does to the amount. */
        double perSize(int part) {
            return gradient[State.PARTS + part];
        }
    }

    private Prospect(double weight, double raw, double logSlope, double[] sizes, Spread spread, Fixed fixed) {
        this.weight = weight;
        this.raw = raw;
        this.logSlope = logSlope;
        this.slope = Math.exp(logSlope);
        this.sizes = sizes;
        this.spread = spread;
        this.fixed = fixed;
    }

    /**
     * A branch.
     *
     * @param moments its moments a day on; not to be changed any more
     * @param laterDays how many days after that are foretold as well
     */
    static Prospect of(double weight, Moments moments, SumModel model, double laterDays) {
        double[] gradient = new double[State.SIZE];
        double[] with = new double[State.SIZE];
        double raw = model.rawAmount(moments.mean(), gradient);
        double amount = moments.project(gradient, with);
        Spread spread = new Spread(
                amount,
                moments.cov(State.SLOPE, State.SLOPE),
                with[State.SLOPE],
                State.parts(with),
                Spread.sizeSds(moments, null),
                null);
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
                new Fixed(moments, gradient, -gone * passing, later));
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
         * @param mean what the look will show on average
         * @param gradient how that goes with each component
         * @param sd scatter of the look itself
         */
        Foretold(Prospect branch, double mean, double[] gradient, double sd) {
            double[] with = new double[State.SIZE];
            this.branch = branch;
            this.mean = mean;
            this.variance = Math.max(0, branch.moments().project(gradient, with)) + sd * sd;
            this.amountWith = Moments.dot(branch.fixed.gradient, with);
            this.slopeWith = with[State.SLOPE];
            this.sizesWith = State.parts(with);
            this.left = branch.spread.after(this, branch.moments());
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

    /** Its moments a day on, before any look. */
    Moments moments() {
        return fixed.moments;
    }

    /** Share of the belief that this branch has, 0 to 1. */
    double weight() {
        return weight;
    }

    /** Slope of the amount in the weir, as a logarithm a millimetre. */
    double slopePerMm() {
        return slope;
    }

    /** Standard deviation of the slope's logarithm. */
    double slopeLogSd() {
        return Math.sqrt(Math.max(0, spread.slope));
    }

    /** The amount a day on before it is bent, after a move and services at these positions. */
    double rawAmount(double mm, int[] serviced) {
        double mean = raw + slope * mm;
        for (int i : serviced) {
            mean -= fixed.perSize(i) * (sizes[i] - SERVICED_SIZE);
        }
        return mean;
    }

    /** Its variance. */
    double rawVariance(double mm, int[] serviced) {
        double step = slope * mm;
        double var = spread.amount + 2 * step * spread.slopeWith + step * step * spread.slope;
        for (int i : serviced) {
            double per = fixed.perSize(i);
            var += -2 * per * spread.sizesWith[i] + per * per * SERVICED_SIZE * SERVICED_SIZE;
            for (int j : serviced) {
                var += per * fixed.perSize(j) * Spread.sizes(fixed.moments, spread.look, i, j);
            }
        }
        return var;
    }

    /** What some days more do to the amount before it is bent. */
    double laterLog() {
        return fixed.laterLog;
    }

    /** What they do to its variance. */
    double laterVariance() {
        return fixed.laterVariance;
    }

    /** Standard deviation of the amount once it is bent, never less than what nobody can foretell. */
    static double bentSd(double raw, double variance) {
        return Math.max(LEAST_SD, SumModel.bentSd(raw, Math.sqrt(Math.max(LEAST_VARIANCE, variance))));
    }

    /** Chance that a part's size is over a limit after it has grown by so much. */
    double chanceOver(int part, double limit, double grown) {
        return 1 - Normal.below((limit - sizes[part] - grown) / spread.sizeSds[part]);
    }
}
