package io.github.weirwise.tank;

/**
 * What hands and accidents set; it changes only at an event.
 *
 * @param weirCrestMm crest as its mark says
 * @param weirSlipMm how much higher the crest really is
 * @param flowLitresPerHour return flow with a clean strainer
 * @param airLitresPerHour clean air draw
 * @param waterCelsius mean water temperature
 * @param backPressurePa pressure in the cup over the room
 * @param reservoirSalinity practical salinity of the top-off water, 0 unless someone mixed it up
 * @param airLineInWater whether the end of the air line hangs in water
 * @param returnPumpOn whether the return pump has power
 * @param injectorOn whether the injector pump has power
 * @param topOffOn whether the top-off works
 * @param topOffStuck whether the top-off runs without end
 * @param powerBackAtHours when power comes back, infinity without a power cut
 * @param reservoirEmpty whether the top-off reservoir ran empty
 * @param cupFull whether the cup is full
 * @param containerFull whether the container is full
 */
public record Controls(
        double weirCrestMm,
        double weirSlipMm,
        double flowLitresPerHour,
        double airLitresPerHour,
        double waterCelsius,
        double backPressurePa,
        double reservoirSalinity,
        boolean airLineInWater,
        boolean returnPumpOn,
        boolean injectorOn,
        boolean topOffOn,
        boolean topOffStuck,
        double powerBackAtHours,
        boolean reservoirEmpty,
        boolean cupFull,
        boolean containerFull) {
    /** Whether there is a power cut. */
    public boolean powerCut() {
        return powerBackAtHours < Double.POSITIVE_INFINITY;
    }

    /** Whether water comes over the weir. */
    public boolean flowing() {
        return returnPumpOn && !powerCut();
    }
}
