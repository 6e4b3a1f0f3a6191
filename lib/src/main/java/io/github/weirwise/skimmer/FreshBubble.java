package io.github.weirwise.skimmer;

/**
 * Size of the injector's bubbles by salinity: salt hinders coalescence, so fresh water gives larger bubbles.
 *
 * <p>A smooth step centred at salinity 6, saturated by 15 to 20, to {@value #FRESH_WATER_RATIO} times the diameter in
 * fresh water. The place of the step follows the coalescence transition of salts (Craig, Ninham and Pashley 1993, from
 * memory) and the bubble counts of Anguelova and Huq 2017; the ratio is from memory and unverified.
 */
final class FreshBubble {
    private static final double FRESH_WATER_RATIO = 3;
    private static final double CENTRE_SALINITY = 6;
    private static final double WIDTH_SALINITY = 2;
    private static final double SEA_SALINITY = 35;

    private FreshBubble() {}

    static double diameterM(FoamTraits traits, Settings settings) {
        double inhibited = inhibition(settings.practicalSalinity()) / inhibition(SEA_SALINITY);
        return traits.freshBubbleMm() / 1000 * (1 + (FRESH_WATER_RATIO - 1) * (1 - inhibited));
    }

    /** Share of coalescence that salt prevents, 0 to 1. */
    static double inhibition(double practicalSalinity) {
        return 1 / (1 + Math.exp(-(practicalSalinity - CENTRE_SALINITY) / WIDTH_SALINITY));
    }
}
