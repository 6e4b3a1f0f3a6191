package io.github.weirwise.trial;

import java.util.List;

/**
 * What became of one tank under one policy.
 *
 * @param label row of the table per cause
 * @param inBand in band at the horizon
 * @param faultsLeft serviceable faults over a quarter of their size that nobody dealt with
 * @param movedWhileWaiting whether the weir was moved though waiting was right
 * @param changes weir moves and services
 * @param moves weir moves
 * @param looks extra readings asked for
 * @param harmful weir moves that did harm, by kind
 * @param hourInBand first hour with a day in band behind it, or the horizon
 * @param daysOut days with the hour's amount out of band
 * @param removed colour carried off, over a unit on target for the whole time
 * @param told what was stated, and what came
 */
record Outcome(
        String label,
        boolean inBand,
        int faultsLeft,
        boolean movedWhileWaiting,
        int changes,
        int moves,
        int looks,
        Harm harmful,
        int hourInBand,
        double daysOut,
        double removed,
        List<Told> told) {
    static final int MOST_LOOKS = 4;
    static final int MOST_CHANGES = 3;

    boolean inBandWithin(int most) {
        return inBand && changes <= most;
    }

    boolean dealtWith() {
        return faultsLeft == 0;
    }

    boolean done(int mostChanges) {
        return inBandWithin(mostChanges) && dealtWith() && !movedWhileWaiting && looks <= MOST_LOOKS;
    }

    /**
     * Harmful moves by kind; a move counts once, under the first that fits.
     *
     * @param hidFault the weir was moved while a serviceable fault was the main reason
     * @param flooded a flood followed
     * @param farther the noise-free distance to the band grew
     */
    record Harm(int hidFault, int flooded, int farther) {
        int all() {
            return hidFault + flooded + farther;
        }
    }

    /**
     * One statement and what came of it.
     *
     * @param topChance stated chance of the likeliest cause
     * @param topRight whether that cause was acting
     * @param bandChance stated chance of an amount in band
     * @param judged whether the statement could be judged: nothing was changed before it was due
     * @param cameInBand whether the amount was in band when due
     * @param inRange whether the amount lay in the stated 80 % range
     */
    record Told(
            double topChance,
            boolean topRight,
            String topCause,
            String trueCause,
            double bandChance,
            boolean judged,
            boolean cameInBand,
            boolean inRange) {}
}
