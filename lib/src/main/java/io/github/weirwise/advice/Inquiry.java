package io.github.weirwise.advice;

/**
 * What looking further is worth. Each look settles about one more question (this part, that part, something that passes,
 * or nothing but the weir), likeliest first; whatever is settled can be done right in one step. A rough bound on a search
 * without recall, cheap enough to ask of every outcome of every look.
 */
final class Inquiry {
    /** What one further look costs, about. */
    static final double LOOK_COST = 0.035;
    /** Worth of a step once the question is settled. */
    private static final double SETTLED = 0.93;

    private Inquiry() {}

    /**
     * Worth of what can still be done: looking on and then acting, or acting at once on the likeliest question.
     *
     * @param shares weight of each question; need not add up to 1
     * @param ranks place of each question, 0 for the greatest
     * @param looksLeft how many looks a person's patience allows, 0 or more
     * @param changesLeft how many changes it allows, 0 or more
     * @return worth times the sum of the shares
     */
    static double worth(double[] shares, int[] ranks, int looksLeft, int changesLeft) {
        double acting = 0;
        double looking = 0;
        for (int question = 0; question < shares.length; question++) {
            int rank = ranks[question];
            acting += shares[question] * StepValues.goingOn(rank, changesLeft);
            // The last look leaves one question: what is not behind the others is behind that.
            double later = rank <= looksLeft ? SETTLED : StepValues.goingOn(rank - looksLeft, changesLeft);
            looking += shares[question] * (later - LOOK_COST * Math.min(rank + 1, looksLeft));
        }
        return looksLeft > 0 ? Math.max(acting, looking) : acting;
    }
}
