package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyInputs;
import io.github.weirwise.unit.WeirSetting;
import java.util.EnumSet;

/**
 * Two things that are known of a unit before anything is read. A healthy one gives its wanted amount with the level within
 * some millimetres of the submergence on its data sheet, however its foam, air and flow differ from the sheet. And one that
 * has run for a while was mostly on target before something went wrong with it, so that a fault is the likelier an
 * explanation, the nearer to its target the unit would run without it. The second does not hold for a unit started lately.
 */
final class SheetTrust {
    /** Spread of the level at which a healthy unit gives its wanted amount, around the sheet's; assumed. */
    private static final double LEVEL_MM = 6;
    /** Shares of units that were on target before: with a faulty part, with anything else amiss, with nothing amiss. */
    private static final double FAULTY_SHARE = 0.82;

    private static final double DISTURBED_SHARE = 0.88;
    private static final double SOUND_SHARE = 0.38;
    /** Spread of the logarithm of the amount among tuned and among untuned units; assumed. */
    private static final double TUNED_LOG = 0.4;

    private static final double UNTUNED_LOG = 2.2;
    /** Draws of a healthy amount lie within this many standard deviations of the heart's spread, the others go far out. */
    private static final double HEART = 1.0;

    private static final double HEART_LOG = 0.6;
    private static final double TAIL_LOG = 2.5;
    private static final double STARTED_WITHIN_HOURS = 30 * 24.0;
    private static final double SLOPE_STEP_MM = 1;
    private static final double USUAL_SLOPE_PER_MM = 0.15;
    /** Over so few millimetres the amount's logarithm goes in a straight line, about. */
    private static final double NEAR_MM = 3;

    private final Foresight foresight;
    private final Segment start;
    private final boolean tuned;
    private final double slopePerMm;
    private final double targetMm;

    SheetTrust(Foresight foresight, Timeline timeline) {
        this.foresight = foresight;
        this.start = timeline.segments().get(0);
        double started = timeline.lastHappening(EnumSet.of(Happening.Kind.FIRST_START), 0);
        this.tuned = !(started >= -STARTED_WITHIN_HOURS);
        this.targetMm = foresight.unit().target().submergenceMm();
        this.slopePerMm = slopePerMm(foresight.unit());
    }

    /** How much the logarithm of the amount grows per millimetre of level, by the law at the sheet's own point. */
    private static double slopePerMm(SkimmerUnit unit) {
        Settings rated = unit.ratedSettings(unit.weir().lowestCrestMm());
        double target = unit.target().submergenceMm();
        double low = amountAt(unit, rated, target - SLOPE_STEP_MM);
        double high = amountAt(unit, rated, target + SLOPE_STEP_MM);
        return low > 0 && high > low ? Math.log(high / low) / (2 * SLOPE_STEP_MM) : USUAL_SLOPE_PER_MM;
    }

    private static double amountAt(SkimmerUnit unit, Settings rated, double submergenceMm) {
        return WeirSetting.crestForSubmergence(unit, rated, submergenceMm).stream()
                .map(crest -> io.github.weirwise.unit.OperatingPoint.of(unit, rated.withWeirCrestMm(crest))
                        .skimmateMlPerDay())
                .findFirst()
                .orElse(0);
    }

    /** Logarithm of the factor on a possibility's weight. */
    double logFactor(Cause cause, Unknowns unknowns) {
        Outlook healthy = foresight.at(healthyInputs(unknowns), unknowns, Influence.NONE);
        double z = (bestLevelMm(healthy, unknowns) - targetMm) / LEVEL_MM;
        return -0.5 * z * z + (tuned ? tunedLog(cause, healthy.logAmount()) : 0);
    }

    /**
     * The level at which the healthy unit gives its wanted amount. The amount goes with the level in a curve, steep when dry and
     * flat when wet, so a weir that stands far off is first set, in thought, to the sheet's level.
     */
    private double bestLevelMm(Outlook atStart, Unknowns unknowns) {
        Outlook near = atStart;
        double offMm = targetMm - atStart.submergenceMm();
        if (Math.abs(offMm) > NEAR_MM) {
            double crestMm = start.settings().weirCrestMm() + offMm;
            near = foresight.at(
                    foresight.inputs(start.clean(), crestMm, unknowns, Influence.NONE), unknowns, Influence.NONE);
        }
        return near.submergenceMm() - near.logAmount() / (unknowns.responseScale() * slopePerMm);
    }

    /** The law's inputs at the start of the journal without any fault. */
    SteadyInputs healthyInputs(Unknowns unknowns) {
        return foresight.inputs(start.clean(), start.settings().weirCrestMm(), unknowns, Influence.NONE);
    }

    /** A healthy unit's amount (logarithm over the target's) from a standard normal number: a wide heart, wide tails. */
    double drawHealthyLog(double normal) {
        double size = Math.abs(normal);
        double edge = HEART;
        double inner = size < edge ? size * HEART_LOG : edge * HEART_LOG + (size - edge) * TAIL_LOG;
        return Math.copySign(inner, normal);
    }

    /** Logarithm of the density by which {@link #drawHealthyLog} draws. */
    double healthyLogDensity(double healthyLog) {
        double size = Math.abs(healthyLog);
        boolean heart = size < HEART * HEART_LOG;
        double normal = heart ? size / HEART_LOG : HEART + (size - HEART * HEART_LOG) / TAIL_LOG;
        return -0.5 * normal * normal - Math.log(Math.sqrt(2 * Math.PI) * (heart ? HEART_LOG : TAIL_LOG));
    }

    private static double tunedLog(Cause cause, double logAmount) {
        if (cause == Cause.BREAK_IN) {
            return 0;
        }
        double share = share(cause);
        double near = density(logAmount / TUNED_LOG) / TUNED_LOG;
        double far = density(logAmount / UNTUNED_LOG) / UNTUNED_LOG;
        return Math.log((share * near + (1 - share) * far) / far);
    }

    private static double share(Cause cause) {
        if (cause == Cause.NOTHING_WRONG || cause == Cause.READING_ERROR) {
            return SOUND_SHARE;
        }
        return cause.serviceable() ? FAULTY_SHARE : DISTURBED_SHARE;
    }

    private static double density(double z) {
        return Math.exp(-0.5 * z * z);
    }
}
