package io.github.weirwise.lab;

import java.util.List;

/**
 * What became of one tank under one policy.
 *
 * @param label the hidden fault
 * @param cost what it cost
 * @param moves weir moves done
 * @param services services done
 * @param needless services of a part fouled by less than a quarter and serviced more recently than on the keeper's calendar
 * @param looks looks asked for
 * @param extraVisits visits asked for beyond the planned
 * @param floodsSeen visits at which a flood was to be seen
 * @param floodsActedOn of these, how often the answer acted
 * @param harmful moves that made it worse, hid a fault, or were followed by a flood
 * @param endsInBand whether the last day's mean was in band
 * @param faultsLeft parts fouled by more than a quarter at the end that a service would have put right
 * @param told statements, and what came
 */
record Outcome(
        String label,
        Cost cost,
        int moves,
        int services,
        int needless,
        int looks,
        int extraVisits,
        int floodsSeen,
        int floodsActedOn,
        int harmful,
        boolean endsInBand,
        int faultsLeft,
        List<Told> told) {
    /** As in the first trial: in band at the end, faults dealt with, at most three changes and four looks. */
    boolean done3() {
        return endsInBand && faultsLeft == 0 && moves + services <= 3 && looks <= 4;
    }

    /**
     * A statement and what came.
     *
     * @param low logarithm of the lower end of the 80 % range over the wanted
     * @param high of its upper end
     * @param chance stated chance to be in band
     * @param came logarithm of the mean amount over the 12 hours before the time of judging
     * @param cameInBand whether that was in band
     * @param before logarithm of the newest amount read, for the forecast "as last time"; not a number without one
     * @param causeChance stated chance of the likeliest cause
     * @param blames whether that cause blames a part
     * @param blamesRight whether that part was fouled by more than a quarter
     */
    record Told(
            double low,
            double high,
            double chance,
            double came,
            boolean cameInBand,
            double before,
            double causeChance,
            boolean blames,
            boolean blamesRight) {
        boolean covered() {
            return came >= low && came <= high;
        }
    }
}
