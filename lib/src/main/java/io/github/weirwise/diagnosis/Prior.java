package io.github.weirwise.diagnosis;

import io.github.weirwise.unit.Fouling;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Sheet;
import java.util.Set;

/**
 * What is taken for likely before anything is read, and how it moves while nobody looks. All numbers are stated judgement from
 * common practice and from the ranges in docs/reference/model.md; none is fitted to a simulated tank.
 */
final class Prior {
    /** The unit gives its wanted amount at its wanted level within a factor of two either way. */
    static final double FOAM_SD = 0.6;
    /** 1 mm of weir is x1.05 to x1.35; the middle goes with the depth of foam over the level. */
    static final double SLOPE_TIMES_DEPTH_MM = 7.5;

    static final double SLOPE_LOG_SD = 0.45;
    /** 20 % less air leaves x0.3 to x0.7 of the amount. */
    static final double AIR_EXPONENT = 3;

    static final double AIR_EXPONENT_SD = 1.3;
    /** A unit's own level over its sheet's: weir's band, foam's weight, bubbles' rise. */
    static final double OFFSET_SD_MM = 3;

    static final double PASSING_SD = 0.35;
    static final double TONE_SD = 0.4;
    static final double EYE_SD_MM = 1.5;
    /** Tanks differ in how fast a part fouls by a factor of two either way. */
    static final double PACE_SD = 0.6;

    /** A part that is at fault is failing: some three times as fast as usual, by a factor of two and a half either way. */
    private static final double FAULTY_PACE = 1;

    private static final double FAULTY_PACE_SD = 0.9;

    /** Foaminess wanders by this much in a day. */
    static final double FOAM_DRIFT = 0.13;
    /** What passes is gone to a third in this many days; what breaks foam goes sooner than what makes it. */
    static final double PASSING_DAYS = 1.2;

    static final double PASSING_USUAL_SD = 0.25;
    static final double OFFSET_DRIFT_MM = 0.15;
    static final double SLOPE_DRIFT = 0.01;
    static final double AIR_EXPONENT_DRIFT = 0.02;
    static final double TONE_DRIFT = 0.03;
    /** A part of weeks moves by this much in a day besides its pace; a part of months less. */
    static final double PART_DRIFT = 0.03;

    static final double SUDDEN_DRIFT = 0.015;

    private static final double FAULTY = 0.6;
    private static final double FAULTY_SD = 0.25;
    private static final double SERVICED = 0.03;
    private static final double SERVICED_SD = 0.05;

    private Prior() {}

    /** Size and its standard deviation of a part that is not the one at fault. */
    static double sound(Part part) {
        return weeks(part) ? 0.15 : 0.06;
    }

    static double soundSd(Part part) {
        return weeks(part) ? 0.14 : 0.07;
    }

    static boolean weeks(Part part) {
        return part.fouling().daysToWorst() <= WEEKS_DAYS;
    }

    private static final double WEEKS_DAYS = 60;

    static void fill(Moments moments, Sheet sheet, Set<Part> faulty) {
        moments.set(State.FOAM, 0, FOAM_SD);
        moments.set(State.SLOPE, Math.log(SLOPE_TIMES_DEPTH_MM / sheet.foamDepthMm()), SLOPE_LOG_SD);
        moments.set(State.AIR_EXPONENT, AIR_EXPONENT, AIR_EXPONENT_SD);
        moments.set(State.OFFSET, 0, OFFSET_SD_MM);
        moments.set(State.PASSING, 0, PASSING_SD);
        moments.set(State.TONE, 0, TONE_SD);
        for (int eye = 0; eye < State.EYES; eye++) {
            moments.set(State.EYE + eye, 0, EYE_SD_MM);
        }
        for (Part part : Part.SERVICEABLE) {
            if (faulty.contains(part)) {
                moments.set(State.of(part), FAULTY, FAULTY_SD);
            } else {
                moments.set(State.of(part), sound(part), soundSd(part));
            }
        }
        for (Part part : State.PACED) {
            boolean fails = faulty.contains(part);
            moments.set(State.paceOf(part), fails ? FAULTY_PACE : 0, fails ? FAULTY_PACE_SD : PACE_SD);
        }
    }

    /** A part as after its service; one that went fast is not taken to go as fast again. */
    static void serviced(Moments moments, Part part) {
        int at = State.of(part);
        if (at >= 0) {
            moments.set(at, SERVICED, SERVICED_SD);
            int pace = State.paceOf(part);
            if (pace >= 0 && moments.mean(pace) > PACE_SD) {
                moments.set(pace, 0, PACE_SD);
            }
        }
    }

    /** Everything as new. */
    static void started(Moments moments) {
        for (Part part : Part.SERVICEABLE) {
            serviced(moments, part);
        }
    }

    /** What some days do to a state. */
    static void forward(Moments moments, double days) {
        double keep = Math.exp(-days / PASSING_DAYS);
        moments.scale(State.PASSING, keep);
        moments.noise(State.PASSING, PASSING_USUAL_SD * PASSING_USUAL_SD * (1 - keep * keep));
        moments.noise(State.FOAM, FOAM_DRIFT * FOAM_DRIFT * days);
        moments.noise(State.OFFSET, OFFSET_DRIFT_MM * OFFSET_DRIFT_MM * days);
        moments.noise(State.SLOPE, SLOPE_DRIFT * SLOPE_DRIFT * days);
        moments.noise(State.AIR_EXPONENT, AIR_EXPONENT_DRIFT * AIR_EXPONENT_DRIFT * days);
        moments.noise(State.TONE, TONE_DRIFT * TONE_DRIFT * days);
        for (Part part : Part.SERVICEABLE) {
            age(moments, part, days);
        }
    }

    private static void age(Moments moments, Part part, double days) {
        int at = State.of(part);
        if (part.fouling().kind() == Fouling.Kind.SUDDEN) {
            moments.noise(at, SUDDEN_DRIFT * SUDDEN_DRIFT * days);
            return;
        }
        double perDay = 1 / part.fouling().daysToWorst();
        int pace = State.paceOf(part);
        if (pace >= 0) {
            double grown = Math.min(1.1, days * perDay * Math.exp(moments.mean(pace)));
            moments.grow(at, pace, grown);
            double drift = weeks(part) ? PART_DRIFT : SUDDEN_DRIFT;
            moments.noise(at, drift * drift * days);
        } else {
            moments.shift(at, days * perDay);
            double spread = PACE_SD * days * perDay;
            moments.noise(at, spread * spread + SUDDEN_DRIFT * SUDDEN_DRIFT * days);
        }
        moments.atMost(at, 1.1);
    }
}
