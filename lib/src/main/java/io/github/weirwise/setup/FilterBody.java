package io.github.weirwise.setup;

import io.github.weirwise.report.Require;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.Objects;

/**
 * The box that holds skimmer chamber, weir, trickle media and the water that the return pump draws from.
 *
 * @param unit the skimmer in it
 * @param chamberFloorMm height of the skimmer chamber's floor over the base, 0 to 3000 mm
 * @param chamberLitresPerMm water in a layer of 1 mm of the skimmer chamber, 0.001 to 20 L
 * @param wetLengthMm inner length of the media side, 50 to 10000 mm
 * @param wetWidthMm inner width of the media side, 50 to 10000 mm
 * @param wetFloorMm height of the media side's floor over the base, 0 to 1000 mm
 * @param mediaBottomMm height of the media's underside over the base, from the floor up
 * @param mediaHeightMm height of the media, 20 to 3000 mm
 * @param mediaLengthMm length of the media, at most that of the side
 * @param mediaVoids share of the media's volume that water can fill, 0.3 to 1
 * @param pumpDrawsAirMm level over the base at which the return pump starts to draw air
 * @param rimMm height of the box's lowest rim over the base
 * @param cupLiftMm how far the cup must be lifted before it is free, 5 to 2000 mm
 * @param cupTopMm height of the closed cup's top over the base
 * @param dryKilograms weight of the box with its parts, without water, 0 to 5000 kg
 * @since 0.1
 */
public record FilterBody(
        SkimmerUnit unit,
        double chamberFloorMm,
        double chamberLitresPerMm,
        double wetLengthMm,
        double wetWidthMm,
        double wetFloorMm,
        double mediaBottomMm,
        double mediaHeightMm,
        double mediaLengthMm,
        double mediaVoids,
        double pumpDrawsAirMm,
        double rimMm,
        double cupLiftMm,
        double cupTopMm,
        double dryKilograms) {
    private static final String MEASURE = "measure the filter again, heights from the base it stands on";

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public FilterBody {
        Objects.requireNonNull(unit, "unit");
        Require.inRange("chamberFloorMm", chamberFloorMm, 0, 3000, "mm", MEASURE);
        Require.inRange("chamberLitresPerMm", chamberLitresPerMm, 0.001, 20, "L", MEASURE);
        Require.inRange("wetLengthMm", wetLengthMm, 50, 10000, "mm", MEASURE);
        Require.inRange("wetWidthMm", wetWidthMm, 50, 10000, "mm", MEASURE);
        Require.inRange("wetFloorMm", wetFloorMm, 0, 1000, "mm", MEASURE);
        Require.inRange("mediaBottomMm", mediaBottomMm, wetFloorMm, 2000, "mm", MEASURE);
        Require.inRange("mediaHeightMm", mediaHeightMm, 20, 3000, "mm", MEASURE);
        Require.inRange("mediaLengthMm", mediaLengthMm, 20, wetLengthMm, "mm", MEASURE);
        Require.inRange("mediaVoids", mediaVoids, 0.3, 1, "", "loose plastic media have 0.85 to 0.95");
        Require.inRange("pumpDrawsAirMm", pumpDrawsAirMm, wetFloorMm, 3000, "mm", MEASURE);
        Require.inRange("rimMm", rimMm, mediaBottomMm + mediaHeightMm / 2, 4000, "mm", MEASURE);
        Require.inRange("cupLiftMm", cupLiftMm, 5, 2000, "mm", MEASURE);
        Require.inRange("cupTopMm", cupTopMm, chamberFloorMm, 6000, "mm", MEASURE);
        Require.inRange("dryKilograms", dryKilograms, 0, 5000, "kg", "give the weight from the data sheet");
    }

    /** Level over the base that covers a share of the media's height. */
    public double levelCoveringMm(double share) {
        return mediaBottomMm + share * mediaHeightMm;
    }
}
