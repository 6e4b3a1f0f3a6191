package io.github.weirwise.tank;

/**
 * What a stretch of a tank's life came to, in the numbers that a person wants.
 *
 * @param days length of the stretch
 * @param skimmateLitresPerWeek liquid taken out by the foam
 * @param saltKgPerWeek salt that left with it
 * @param salinityDriftPerWeek change of practical salinity that this loss alone causes when fresh water replaces it;
 *     negative
 * @param organicsSkimmedG organics taken out by the foam
 * @param evaporatedLitresPerDay water lost to the room
 * @param feedNitrogenG nitrogen fed
 * @param nitrogenSkimmedG nitrogen taken out by the foam
 * @param spilledLitres water and skimmate on the floor
 * @since 0.1
 */
public record TankSummary(
        double days,
        double skimmateLitresPerWeek,
        double saltKgPerWeek,
        double salinityDriftPerWeek,
        double organicsSkimmedG,
        double evaporatedLitresPerDay,
        double feedNitrogenG,
        double nitrogenSkimmedG,
        double spilledLitres) {
    private static final double HOURS_IN_DAY = 24;
    private static final double DAYS_IN_WEEK = 7;

    /**
     * The summary of a stretch.
     *
     * @param before its first moment
     * @param after its last moment, of the same run
     * @throws IllegalArgumentException if the stretch has no length
     */
    public static TankSummary between(TankState before, TankState after) {
        double days = (after.hours() - before.hours()) / HOURS_IN_DAY;
        if (!(days > 0)) {
            throw new IllegalArgumentException("a stretch needs a length, got " + days + " days; give a later state");
        }
        double weeks = days / DAYS_IN_WEEK;
        double saltKg = (after.of(Stock.SALT_SKIMMED_KG) - before.of(Stock.SALT_SKIMMED_KG)) / weeks;
        return new TankSummary(
                days,
                (after.of(Stock.SKIMMATE_ML) - before.of(Stock.SKIMMATE_ML)) / 1000 / weeks,
                saltKg,
                -before.practicalSalinity() * saltKg / before.of(Stock.SALT_KG),
                after.of(Stock.ORGANICS_SKIMMED_G) - before.of(Stock.ORGANICS_SKIMMED_G),
                (after.of(Stock.EVAPORATED_KG) - before.of(Stock.EVAPORATED_KG)) / days,
                after.of(Stock.NITROGEN_IN_G) - before.of(Stock.NITROGEN_IN_G),
                after.of(Stock.NITROGEN_SKIMMED_G) - before.of(Stock.NITROGEN_SKIMMED_G),
                after.of(Stock.SPILLED_LITRES) - before.of(Stock.SPILLED_LITRES));
    }
}
