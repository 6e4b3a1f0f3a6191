package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;
import org.hipparchus.special.Gamma;

/**
 * Another law of lives of bubbles: S(t) = exp(-(t/tau)^k), Weibull's. Lives of single bubbles at a surface follow it (Watanabe &amp;
 * Saruwatari 2024, Flow). Under k = 1 there are more very short and very long lives than by an exponential law, over it fewer.
 *
 * @param meanLifeS Sigma = tau Gamma(1 + 1/k), 1e-3 to 1e6 s
 * @param shape k, 0.3 to 10
 */
record WeibullLife(double meanLifeS, double shape) {
    WeibullLife {
        Require.inRange("meanLifeS", meanLifeS, 1e-3, 1e6, "s", "tank foam lives for tens of seconds on average");
        Require.inRange("shape", shape, 0.3, 10, "", "use 0.7 to 1.5");
    }

    /** The time scale tau, s. */
    double tauS() {
        return meanLifeS / Math.exp(Gamma.logGamma(1 + 1 / shape));
    }

    /** Share of bubbles that live longer than {@code ageS}, 1 down to 0. */
    double survival(double ageS) {
        return Math.exp(-Math.pow(ageS / tauS(), shape));
    }

    /**
     * Share of the gas that leaves the top of a foam as foam: S at the age T with V = Q times the integral of S to T, which is Sigma
     * P(1/k, (T/tau)^k) with the regularised incomplete gamma function P.
     */
    double survivingShare(double gasFlowM3PerS, double foamGasVolumeM3) {
        double held = foamGasVolumeM3 / (gasFlowM3PerS * meanLifeS);
        if (!(held < 1)) {
            return 0;
        }
        double low = 0;
        double high = 700;
        for (int i = 0; i < 200; i++) {
            double middle = 0.5 * (low + high);
            if (Gamma.regularizedGammaP(1 / shape, middle) < held) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.exp(-0.5 * (low + high));
    }
}
