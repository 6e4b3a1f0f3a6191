package io.github.weirwise.trial;

/**
 * Head over the true weir: Rehbock (1929), as in many handbooks, Q = (2/3)(0.602 + 0.083 h/p) sqrt(2g) b (h + 0.0012
 * m)^1.5, with a unit's own discharge factor for edge and nappe; drowned by a mean of free and downstream heads (our own).
 */
final class TrueWeir {
    private static final double DROWNING = 2.3;

    private TrueWeir() {}

    /** Head, m, for a flow in m3/s over a weir b wide and p high, both in m. */
    static double headM(double flow, double widthM, double heightM, double discharge) {
        if (flow <= 0) {
            return 0;
        }
        double head = 0.02;
        for (int i = 0; i < 12; i++) {
            double coefficient = discharge * 2.0 / 3 * (0.602 + 0.083 * head / heightM) * Math.sqrt(2 * 9.81);
            double next = Math.pow(flow / (coefficient * widthM), 2.0 / 3) - 0.0012;
            if (Math.abs(next - head) < 1e-7) {
                return Math.max(0, next);
            }
            head = Math.max(1e-4, next);
        }
        return head;
    }

    /** Head when the water beyond stands this far over the crest, m. */
    static double drownedHeadM(double freeHeadM, double beyondM) {
        if (beyondM <= 0) {
            return freeHeadM;
        }
        return Math.pow(Math.pow(freeHeadM, DROWNING) + Math.pow(beyondM, DROWNING), 1 / DROWNING);
    }
}
