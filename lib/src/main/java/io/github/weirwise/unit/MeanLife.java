package io.github.weirwise.unit;

/**
 * Mean life of a bubble in the foam by load, salinity, dirt and additives, relative to the unit's own mean life at the
 * reference condition.
 *
 * <p>Only the signs are known (more load and salt: longer; oil and a dirty neck: shorter). The exponents and shares are
 * assumed; {@code docs/reference/model.md} lists how much hangs on each.
 */
final class MeanLife {
    /** Life goes with load to this power: twice the load is 11 % more life, about 2.5 times the skimmate. */
    private static final double LOAD_EXPONENT = 0.15;
    /** Salinity acts weakly once coalescence is hindered: 10 % less salt is 2 % less life. */
    private static final double SALINITY_EXPONENT = 0.2;
    /** A thick film in the neck takes this share of the life. */
    private static final double NECK_SHARE = 0.25;
    /** Oil at its worst takes this share of the life. */
    private static final double OIL_SHARE = 0.6;
    /** A foaming agent adds this share of the life per unit of its strength. */
    private static final double BOOSTER_SHARE = 0.5;

    private static final double SEA_SALINITY = 35;

    private MeanLife() {}

    static double seconds(FoamTraits traits, Settings settings) {
        Condition condition = settings.condition();
        double load =
                Math.pow(condition.skimmableMgPerLitre() / Condition.REFERENCE_SKIMMABLE_MG_PER_LITRE, LOAD_EXPONENT);
        double salt = Math.pow(settings.practicalSalinity() / SEA_SALINITY, SALINITY_EXPONENT)
                * FreshBubble.inhibition(settings.practicalSalinity());
        return traits.meanLifeSeconds()
                * load
                * salt
                * (1 - NECK_SHARE * condition.neckFouling())
                * (1 - OIL_SHARE * condition.filmBreaker())
                * (1 + BOOSTER_SHARE * condition.foamBooster());
    }
}
