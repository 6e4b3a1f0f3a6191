package io.github.weirwise.diagnosis;

/**
 * What nobody can read off a unit but its journal slowly tells. Scales multiply the nominal value.
 *
 * @param lifeScale on the mean life of the foam
 * @param lifeShape exponent alpha of the law of lives
 * @param responseScale on the logarithm of the amount against its target, because real units answer more gently or more
 *     steeply than the law
 * @param airScale on the clean air draw
 * @param flowScale on the flow
 * @param crestOffsetMm true crest over its mark
 * @param riseScale on the speed at which the bubbles rise: nobody has measured them
 * @param weightOnWater share of the foam's weight that rests on the water
 * @param rulerBiasMm what the eye of the usual reader adds to the level
 * @param otherBiasMm the same for anybody else
 * @param darknessScale on the darkness
 */
record Unknowns(
        double lifeScale,
        double lifeShape,
        double responseScale,
        double airScale,
        double flowScale,
        double crestOffsetMm,
        double riseScale,
        double weightOnWater,
        double rulerBiasMm,
        double otherBiasMm,
        double darknessScale) {
    Unknowns withEyes(double usualBiasMm, double anyOtherBiasMm, double tone) {
        return new Unknowns(
                lifeScale,
                lifeShape,
                responseScale,
                airScale,
                flowScale,
                crestOffsetMm,
                riseScale,
                weightOnWater,
                usualBiasMm,
                anyOtherBiasMm,
                tone);
    }

    Unknowns withLifeScale(double value) {
        return new Unknowns(
                value,
                lifeShape,
                responseScale,
                airScale,
                flowScale,
                crestOffsetMm,
                riseScale,
                weightOnWater,
                rulerBiasMm,
                otherBiasMm,
                darknessScale);
    }
}
