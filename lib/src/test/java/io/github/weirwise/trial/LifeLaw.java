package io.github.weirwise.trial;

/**
 * How long bubbles live in the true foam, as a family of survival functions from calm (0) to steep (1). None of them is
 * the library's power law.
 */
enum LifeLaw {
    /** Weibull, gas of burst bubbles leaves through the foam. */
    WEIBULL(false) {
        @Override
        double survival(double t, double steepness) {
            return Math.exp(-Math.pow(t, 0.18 + 0.9 * steepness));
        }
    },
    /** Log-normal, gas leaves through the foam. */
    LOG_NORMAL(false) {
        @Override
        double survival(double t, double steepness) {
            double sigma = 3.2 - 2.5 * steepness;
            return upperNormal(Math.log(t) / sigma);
        }
    },
    /** A few long-lived bubbles among many short-lived ones, gas leaves through the foam. */
    TWO_KINDS(false) {
        @Override
        double survival(double t, double steepness) {
            double longLived = 0.06 * Math.pow(15, steepness);
            return (1 - longLived) * Math.exp(-t / 0.03) + longLived * Math.exp(-t);
        }
    },
    /** Weibull, bubbles burst at the foam's top only. */
    WEIBULL_AT_TOP(true) {
        @Override
        double survival(double t, double steepness) {
            return Math.exp(-Math.pow(t, 0.4 + 3 * steepness));
        }
    },
    /** Log-logistic, bubbles burst at the foam's top only. */
    LOGISTIC_AT_TOP(true) {
        @Override
        double survival(double t, double steepness) {
            return 1 / (1 + Math.pow(t, 1.5 + 10 * steepness));
        }
    };

    private final boolean ventsAtTop;

    LifeLaw(boolean ventsAtTop) {
        this.ventsAtTop = ventsAtTop;
    }

    /** Share of bubbles that live longer than t, in the law's own unit of time. */
    abstract double survival(double t, double steepness);

    /** Whether all gas stays in the foam until it reaches the top. */
    boolean ventsAtTop() {
        return ventsAtTop;
    }

    /** Upper tail of the normal distribution by Abramowitz and Stegun 26.2.17 (error below 1e-7). */
    static double upperNormal(double z) {
        double a = Math.abs(z);
        double t = 1 / (1 + 0.2316419 * a);
        double tail = Math.exp(-a * a / 2)
                / Math.sqrt(2 * Math.PI)
                * t
                * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return z >= 0 ? tail : 1 - tail;
    }
}
