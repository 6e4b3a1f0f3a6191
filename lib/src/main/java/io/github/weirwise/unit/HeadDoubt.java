package io.github.weirwise.unit;

import io.github.weirwise.internal.physics.hydraulics.RectangularWeir;
import io.github.weirwise.report.Range;

/** The band in which the head lies, as wide as the weir formula is doubtful at this head. */
record HeadDoubt(Range bandMm) {
    static HeadDoubt of(SkimmerUnit unit, SteadyInputs inputs, SteadyPoint point) {
        double headMm = point.headM() * 1000;
        if (inputs.flowM3PerS() <= 0 || inputs.levelBeyondM() > inputs.crestM()) {
            // A drowned weir's head hangs on the level beyond, which is read, not computed: keep the free weir's
            // spread.
            double half = Math.max(1, 0.1 * headMm);
            return new HeadDoubt(new Range(Math.max(0, headMm - half), headMm + half));
        }
        RectangularWeir weir =
                new RectangularWeir(unit.weir().widthMm() / 1000, unit.weir().channelWidthMm() / 1000, inputs.crestM());
        Range band = weir.headBand(inputs.flowM3PerS() - point.overflowM3PerS());
        return new HeadDoubt(new Range(band.low() * 1000, band.high() * 1000));
    }

    double halfWidthMm() {
        return bandMm.width() / 2;
    }
}
