package io.github.weirwise.unit;

/**
 * Water that stands over the lip: it leaves by the weir and over the rim of the necks together, so the clear-water level is
 * where both pass the flow. Weir and rim by {@link SteadyLaw}; the holdup is taken as below the lip.
 */
record LipOverflow(SteadyLaw law, SteadyInputs in, double holdup) {
    private static final double TOLERANCE_M = 1e-13;

    /**
     * The clear-water level, m: between the one that brings the column to the lip and the one without any overflow.
     *
     * @param withoutM level if all went over the weir
     */
    double clearM(double withoutM) {
        double low = law.clearAtLipM(holdup, in);
        double high = Math.max(low, withoutM);
        while (high - low > TOLERANCE_M) {
            double middle = 0.5 * (low + high);
            if (middle <= low || middle >= high) {
                break;
            }
            if (law.weirFlowM3PerS(middle, in) + overflow(middle) < in.flowM3PerS()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** The column's level that belongs to a clear-water level, at the lip or over it. */
    double levelM(double clearM) {
        return Math.max(law.lipM(), law.columnLevelM(clearM, holdup, in));
    }

    /** Water into the cup besides the foam's, never more than the flow. */
    double overflowM3PerS(double clearM) {
        return Math.min(in.flowM3PerS(), overflow(clearM));
    }

    private double overflow(double clearM) {
        return law.rimFlowM3PerS(levelM(clearM), holdup);
    }
}
