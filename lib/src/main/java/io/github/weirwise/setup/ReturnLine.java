package io.github.weirwise.setup;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import java.util.Objects;

/**
 * The way from the return pump up to the tank.
 *
 * @param plumbing pipe and fittings
 * @param mouthBelowCrestMm how far the mouth lies under the overflow's crest; negative when it ends above, -2000 to 3000 mm
 * @param breakBelowCrestMm how far the siphon-break hole lies under the crest; negative when above; the mouth's own depth
 *     when there is no hole
 * @param checkValve whether a check valve is fitted; it is never counted on, because one grain of sand holds it open
 */
public record ReturnLine(Plumbing plumbing, double mouthBelowCrestMm, double breakBelowCrestMm, boolean checkValve) {
    private static final Limit MOUTH_BELOW_CREST_MM =
            Limit.of("mouthBelowCrestMm", -2000, 3000, Unit.MILLIMETRE, "setup.try.measureDownFromThe");
    private static final Limit BREAK_BELOW_CREST_MM =
            Limit.of("breakBelowCrestMm", -2000, 3000, Unit.MILLIMETRE, "setup.try.theHoleLiesAbove");

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public ReturnLine {
        Objects.requireNonNull(plumbing, "plumbing");
        MOUTH_BELOW_CREST_MM.check(mouthBelowCrestMm);
        BREAK_BELOW_CREST_MM.checkTo(breakBelowCrestMm, Math.max(-2000, mouthBelowCrestMm));
    }

    /** Whether the line has a siphon-break hole above its mouth. */
    public boolean hasSiphonBreak() {
        return breakBelowCrestMm < mouthBelowCrestMm;
    }
}
