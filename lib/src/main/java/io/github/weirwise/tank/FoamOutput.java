package io.github.weirwise.tank;

/**
 * What a skimmer gives at rest, as far as the tank is concerned.
 *
 * @param skimmateMlPerDay liquid into the cup
 * @param strengthMgPerLitre skimmable organics in that liquid, at least those of the tank water
 * @param airLitresPerHour air that passes the water
 * @param flooding whether water runs into the cup
 */
public record FoamOutput(
        double skimmateMlPerDay, double strengthMgPerLitre, double airLitresPerHour, boolean flooding) {
    /** No air, no foam. */
    public static final FoamOutput NONE = new FoamOutput(0, 0, 0, false);
}
