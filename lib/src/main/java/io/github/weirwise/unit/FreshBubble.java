package io.github.weirwise.unit;

import io.github.weirwise.internal.physics.bubbles.Coalescence;

/**
 * Size of the injector's bubbles (m) by salinity: {@link Coalescence}'s step between fresh and sea water, scaled so that a
 * unit's own value holds at salinity 35. In fresh water they are {@value #FRESH_WATER_RATIO} times as large; from memory and
 * unverified.
 */
final class FreshBubble {
    private static final double FRESH_WATER_RATIO = 3;
    private static final double SEA_SALINITY = 35;

    private FreshBubble() {}

    static double diameterM(FoamTraits traits, Settings settings) {
        double atSeaM = traits.freshBubbleMm() / 1000;
        return atSeaM * relative(settings.practicalSalinity()) / relative(SEA_SALINITY);
    }

    private static double relative(double practicalSalinity) {
        double unit = 0.01;
        return Coalescence.diameter(FRESH_WATER_RATIO * unit, unit, practicalSalinity) / unit;
    }
}
