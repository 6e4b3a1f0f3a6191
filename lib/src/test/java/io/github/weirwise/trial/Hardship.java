package io.github.weirwise.trial;

/**
 * How the trial is bent away from its usual setting in a shift test.
 *
 * @param response factor on the steepness of every unit's answer
 * @param lag factor on the hours that foam needs to settle
 * @param noise factor on reading errors and on the load's unrest
 * @param misreports share of visits at which one reading is grossly wrong
 * @param unnamed share of tanks whose cause nobody has named
 * @param evenMix whether all causes come equally often
 */
record Hardship(double response, double lag, double noise, double misreports, double unnamed, boolean evenMix) {
    static final Hardship USUAL = new Hardship(1, 1, 1, 0, 0, false);
}
