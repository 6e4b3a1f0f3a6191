package io.github.weirwise.unit;

/**
 * Mean life of a bubble in the foam by load, salinity, dirt and additives, relative to the unit's own mean life at the
 * reference condition.
 *
 * <p>Only the signs are known (more load and salt: longer; oil and a dirty neck: shorter). Neck and salt take what their rows in
 * {@link Part} say of the amount; exponents and shares of the others are assumed; {@code docs/reference/model.md} lists how much hangs on each.
 */
final class MeanLife {
    /** Life goes with load to this power: twice the load is 11 % more life, about 1.5 times the skimmate. */
    private static final double LOAD_EXPONENT = 0.15;
    /** Oil at its worst takes this share of the life. */
    private static final double OIL_SHARE = 0.6;
    /** A foaming agent adds this share of the life per unit of its strength. */
    private static final double BOOSTER_SHARE = 0.5;

    private static final double SEA_SALINITY = 35;
    /** Logarithms of life per logarithm of amount. */
    private static final double LIFE_PER_AMOUNT = 1 / LipAnswer.USUAL.lifeExponent();

    private static final double NECK_LOG =
            LIFE_PER_AMOUNT * Part.NECK_AND_CUP.worst().amountLog();
    /** Salt scales the foam, it does not annihilate it in fresh water: the amount there is about a hundredth. */
    private static final double SALT_LOG =
            LIFE_PER_AMOUNT * Part.SALT_MIX.worst().amountLog() / Part.WORST_SALINITY_LOSS;

    private MeanLife() {}

    static double seconds(FoamTraits traits, Settings settings) {
        Condition condition = settings.condition();
        double load =
                Math.pow(condition.skimmableMgPerLitre() / Condition.REFERENCE_SKIMMABLE_MG_PER_LITRE, LOAD_EXPONENT);
        double salt = SALT_LOG * (SEA_SALINITY - settings.practicalSalinity());
        return traits.meanLifeSeconds()
                * load
                * Math.exp(salt + NECK_LOG * condition.neckFouling())
                * (1 - OIL_SHARE * condition.filmBreaker())
                * (1 + BOOSTER_SHARE * condition.foamBooster());
    }
}
