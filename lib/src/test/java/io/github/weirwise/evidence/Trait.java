package io.github.weirwise.evidence;

import io.github.weirwise.unit.FoamTraits;

/** The numbers of {@link FoamTraits} in the order of its components, to change one by name. */
enum Trait {
    MEAN_LIFE,
    LIFE_SHAPE,
    FRESH_BUBBLE,
    LIP_BUBBLE,
    FILM_MOBILITY,
    DRAINAGE_EXPONENT,
    HOLDUP_EXPONENT,
    FOAM_LIQUID,
    WEIGHT_ON_WATER,
    FEED_SHARE;

    private static double[] values(FoamTraits traits) {
        return new double[] {
            traits.meanLifeSeconds(),
            traits.lifeShape(),
            traits.freshBubbleMm(),
            traits.lipBubbleMm(),
            traits.filmMobility(),
            traits.drainageExponent(),
            traits.holdupExponent(),
            traits.meanFoamLiquidFraction(),
            traits.weightOnWater(),
            traits.columnFeedShare()
        };
    }

    double of(FoamTraits traits) {
        return values(traits)[ordinal()];
    }

    /** The same traits with this number changed. */
    FoamTraits set(FoamTraits traits, double value) {
        double[] v = values(traits);
        v[ordinal()] = value;
        return new FoamTraits(v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7], v[8], v[9], java.util.Optional.empty());
    }
}
