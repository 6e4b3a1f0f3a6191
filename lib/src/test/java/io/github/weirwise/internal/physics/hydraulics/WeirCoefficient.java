package io.github.weirwise.internal.physics.hydraulics;

/** The discharge coefficient Ce = alpha + beta h/p that a weir's discharge contains, without unit; tables print it by itself. */
public final class WeirCoefficient {
    private WeirCoefficient() {}

    /** Ce at a head over the crest, m, within the published ratios of head to crest height. */
    public static double at(RectangularWeir weir, double headM) {
        WeirShape shape = WeirShape.of(weir.widthM() / weir.channelWidthM());
        return shape.alpha() + shape.beta() * headM / weir.crestHeightM();
    }
}
