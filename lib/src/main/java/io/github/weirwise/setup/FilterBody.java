package io.github.weirwise.setup;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
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
    private static final String TRY = "setup.try.measureTheFilterAgain";

    private static final Limit CHAMBER_FLOOR_MM = Limit.of("chamberFloorMm", 0, 3000, Unit.MILLIMETRE, TRY);
    private static final Limit CHAMBER_LITRES_PER_MM = Limit.of("chamberLitresPerMm", 0.001, 20, Unit.LITRE, TRY);
    private static final Limit WET_LENGTH_MM = Limit.of("wetLengthMm", 50, 10000, Unit.MILLIMETRE, TRY);
    private static final Limit WET_WIDTH_MM = Limit.of("wetWidthMm", 50, 10000, Unit.MILLIMETRE, TRY);
    private static final Limit WET_FLOOR_MM = Limit.of("wetFloorMm", 0, 1000, Unit.MILLIMETRE, TRY);
    private static final Limit MEDIA_BOTTOM_MM = Limit.of("mediaBottomMm", 0, 2000, Unit.MILLIMETRE, TRY);
    private static final Limit MEDIA_HEIGHT_MM = Limit.of("mediaHeightMm", 20, 3000, Unit.MILLIMETRE, TRY);
    private static final Limit MEDIA_LENGTH_MM = Limit.of("mediaLengthMm", 20, 10000, Unit.MILLIMETRE, TRY);
    private static final Limit MEDIA_VOIDS =
            Limit.of("mediaVoids", 0.3, 1, Unit.PLAIN, "setup.try.loosePlasticMediaHave");
    private static final Limit PUMP_DRAWS_AIR_MM = Limit.of("pumpDrawsAirMm", 0, 3000, Unit.MILLIMETRE, TRY);
    private static final Limit RIM_MM = Limit.of("rimMm", 10, 4000, Unit.MILLIMETRE, TRY);
    private static final Limit CUP_LIFT_MM = Limit.of("cupLiftMm", 5, 2000, Unit.MILLIMETRE, TRY);
    private static final Limit CUP_TOP_MM = Limit.of("cupTopMm", 0, 6000, Unit.MILLIMETRE, TRY);
    private static final Limit DRY_KILOGRAMS =
            Limit.of("dryKilograms", 0, 5000, Unit.KILOGRAM, "setup.try.giveTheWeightFrom");

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public FilterBody {
        Objects.requireNonNull(unit, "unit");
        CHAMBER_FLOOR_MM.check(chamberFloorMm);
        CHAMBER_LITRES_PER_MM.check(chamberLitresPerMm);
        WET_LENGTH_MM.check(wetLengthMm);
        WET_WIDTH_MM.check(wetWidthMm);
        WET_FLOOR_MM.check(wetFloorMm);
        MEDIA_BOTTOM_MM.checkFrom(mediaBottomMm, wetFloorMm);
        MEDIA_HEIGHT_MM.check(mediaHeightMm);
        MEDIA_LENGTH_MM.checkTo(mediaLengthMm, wetLengthMm);
        MEDIA_VOIDS.check(mediaVoids);
        PUMP_DRAWS_AIR_MM.checkFrom(pumpDrawsAirMm, wetFloorMm);
        RIM_MM.checkFrom(rimMm, mediaBottomMm + mediaHeightMm / 2);
        CUP_LIFT_MM.check(cupLiftMm);
        CUP_TOP_MM.checkFrom(cupTopMm, chamberFloorMm);
        DRY_KILOGRAMS.check(dryKilograms);
    }

    /** Level over the base that covers a share of the media's height. */
    public double levelCoveringMm(double share) {
        return mediaBottomMm + share * mediaHeightMm;
    }
}
