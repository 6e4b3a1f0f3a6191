package io.github.weirwise.setup;

import io.github.weirwise.internal.physics.hydraulics.RectangularWeir;
import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;

/**
 * The tank's overflow: a straight edge or comb over which the tank's surface runs into the drain.
 *
 * @param openWidthMm clear width of the edge, teeth of a comb taken off, 10 to 20000 mm
 */
public record Overflow(double openWidthMm) {
    private static final Limit OPEN_WIDTH_MM =
            Limit.of("openWidthMm", 10, 20000, Unit.MILLIMETRE, "setup.try.measureTheEdgeAnd");

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if the width is out of its range
     */
    public Overflow {
        OPEN_WIDTH_MM.check(openWidthMm);
    }

    /** Head of water over the crest for a flow, by Kindsvater and Carter at full width, mm. */
    double headMm(DisplayTank tank, double flowLitresPerHour) {
        return 1000 * weir(tank).head(flowLitresPerHour / 3.6e6);
    }

    /** The same with the formula's doubt, mm. */
    Range headBandMm(DisplayTank tank, double flowLitresPerHour) {
        Range band = weir(tank).headBand(flowLitresPerHour / 3.6e6);
        return new Range(1000 * band.low(), 1000 * band.high());
    }

    private RectangularWeir weir(DisplayTank tank) {
        return new RectangularWeir(openWidthMm / 1000, openWidthMm / 1000, tank.crestMm() / 1000);
    }
}
