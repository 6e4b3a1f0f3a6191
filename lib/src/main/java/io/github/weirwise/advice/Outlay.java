package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.diagnosis.Mixture;
import io.github.weirwise.diagnosis.Normal;
import io.github.weirwise.diagnosis.Prospects;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Target;
import java.time.Duration;
import java.util.Set;

/**
 * What a step costs over the next days, in days of a badly running skimmer: its work, the day that follows, and the days after
 * that with the weir free to be set again by what tomorrow's reading will show.
 */
final class Outlay {
    /** Days that are looked ahead. */
    static final double HORIZON_DAYS = 7;
    /** Days over which a fouled part is weighed against its service: after them most of it has come round anyway. */
    private static final double PARTS_HORIZON_DAYS = 10;
    /** Who comes seldom weighs it over as many visits, four weeks at most. */
    private static final int PARTS_HORIZON_VISITS = 10;

    private static final double MOST_PARTS_HORIZON_DAYS = 28;
    private static final double MINUTES_A_DAY = 1440;

    private static final double FOULED = 0.5;
    private static final double CLEAN = 0.25;
    private static final double IN_VAIN = 0.6;
    private static final double LEAST_INTERVAL_DAYS = 7;
    /** Scatter of tomorrow's amount as a reading of what the unit does, a logarithm. */
    private static final double READING_SD = 0.3;
    /** A move misses by this share of itself besides what is known of the slope. */
    private static final double MOVE_MISS = 0.25;
    /** A unit that can hold a steady level still wanders by this within a day. */
    private static final double LEAST_SD = 0.18;

    /** Costs this near may be the same. */
    private static final double CLOSE = 1e-9;

    private static final double[] POINTS = {-2.85697, -1.35563, 0, 1.35563, 2.85697};
    private static final double[] WEIGHTS = {0.011257, 0.222076, 0.533333, 0.222076, 0.011257};
    private static final double LOW = Math.log(Target.AMOUNT_BAND.low());
    private static final double HIGH = Math.log(Target.AMOUNT_BAND.high());
    /** Where a unit is best set: the middle of the band by logarithms, a little to the wet, since film takes away daily. */
    private static final double AIM = 0.5 * (LOW + HIGH) + 0.05;

    private final Belief belief;
    private final Efforts efforts;
    private final double floodLog;
    private final double partsHorizonDays;

    Outlay(Belief belief, Efforts efforts) {
        this.belief = belief;
        this.efforts = efforts;
        this.floodLog = floodLog(belief.unit());
        double visitDays = belief.rhythm().orElse(Duration.ZERO).toMinutes() / MINUTES_A_DAY;
        this.partsHorizonDays =
                Math.max(PARTS_HORIZON_DAYS, Math.min(MOST_PARTS_HORIZON_DAYS, PARTS_HORIZON_VISITS * visitDays));
    }

    /** Logarithm of the amount over the wanted one at which cup and drain are overrun within a day. */
    static double floodLog(SkimmerUnit unit) {
        return Math.max(HIGH + 0.3, unit.fillsCupLog());
    }

    static double aim() {
        return AIM;
    }

    /** Some branches, with all that no step changes reckoned once. */
    final class Ahead {
        private final Prospects branches;
        private final double[] left = new double[Part.SERVICEABLE.size()];
        private final double allLeft;
        /** By how much of itself a move misses. */
        private final double miss;

        private Ahead(Prospects branches) {
            this.branches = branches;
            double sum = 0;
            for (int i = 0; i < left.length; i++) {
                left[i] = left(branches, Part.SERVICEABLE.get(i));
                sum += left[i];
            }
            allLeft = sum;
            miss = Math.hypot(branches.slopeLogSd(), MOVE_MISS);
        }

        /** The expected cost of a move or of services. */
        double cost(double mm, Set<Part> serviced) {
            return cost(mm, serviced, Double.POSITIVE_INFINITY);
        }

        /** The expected cost; of what is plainly dearer than {@code most} only something over that. */
        double cost(double mm, Set<Part> serviced, double most) {
            double least = allLeft - CLOSE + (mm == 0 ? 0 : efforts.move());
            for (Part part : serviced) {
                least += efforts.work() * part.work().effortDays() - left[Part.SERVICEABLE.indexOf(part)];
            }
            if (least > most) {
                return least;
            }
            Prospects.After after = branches.after(mm, serviced);
            double day = badly(after.tomorrow());
            double far = efforts.dayOut() * after.movesAway(AIM, Plan.FARTHEST_UP_MM);
            if (least + day + far > most) {
                return least + day + far;
            }
            double cost = allLeft + day + (HORIZON_DAYS - 1) * setAgain(miss, after.later());
            cost += far;
            if (mm != 0) {
                cost += efforts.move();
            }
            for (Part part : serviced) {
                cost += efforts.work() * part.work().effortDays() + awayCost(part) + inVain(branches, part);
                cost -= left[Part.SERVICEABLE.indexOf(part)];
            }
            return cost;
        }
    }

    Ahead ahead(Prospects branches) {
        return new Ahead(branches);
    }

    /** A part that was seen to within its usual interval and is clean is taken apart in vain: work, and trust in the next advice. */
    private double inVain(Prospects branches, Part part) {
        boolean lately = belief.service(part)
                .filter(at -> Duration.between(at, belief.now()).toHours()
                        < 24 * Math.max(LEAST_INTERVAL_DAYS, part.upkeepDays()))
                .isPresent();
        return lately ? IN_VAIN * (1 - branches.chanceOver(part, CLEAN, 0)) : 0;
    }

    /** Foam that stays away after a service counts as that share of a day out. */
    private double awayCost(Part part) {
        return efforts.dayOut() * 0.15 * part.work().foamAwayHours() / 24;
    }

    /**
     * A part left as it is: what its fouling costs if it stays as likely as it is now. What it will foul later is not counted; it
     * is weighed again every day, and a service too early is a service wasted.
     */
    private double left(Prospects branches, Part part) {
        return efforts.fouledPartDay() * partsHorizonDays * branches.chanceOver(part, FOULED, 1);
    }

    /** A day at an amount: out of the band, or flooded. */
    double badly(Mixture amount) {
        double sum = 0;
        for (int i = 0; i < amount.weights().length; i++) {
            sum += amount.weights()[i] * badly(amount.means()[i], amount.sds()[i]);
        }
        return sum;
    }

    private double badly(double mean, double sd) {
        double dry = Normal.below((LOW - mean) / sd);
        double wet = 1 - Normal.below((HIGH - mean) / sd);
        double flood = 1 - Normal.below((floodLog - mean) / sd);
        return efforts.dayOut() * (dry + wet) + (efforts.floodedDay() - efforts.dayOut()) * flood;
    }

    /** A day later on, when the weir may have been set again: the mean over what tomorrow's reading may show. */
    private double setAgain(double miss, Mixture later) {
        double mean = later.mean();
        double sd = Math.max(LEAST_SD, later.sd());
        double known = sd * READING_SD / Math.hypot(sd, READING_SD);
        double shown = Math.sqrt(Math.max(0, sd * sd - known * known));
        double left = Math.max(LEAST_SD, known);
        double onAim = badly(AIM, left) * (HORIZON_DAYS - 2);
        double leastMoved = (efforts.move() + onAim) / (HORIZON_DAYS - 1);
        double sum = 0;
        for (int i = 0; i < POINTS.length; i++) {
            double at = mean + shown * POINTS[i];
            double cost = badly(at, left);
            if (cost > leastMoved) {
                double after = badly(AIM, Math.hypot(left, (AIM - at) * miss)) + onAim;
                cost = Math.min(cost, (efforts.move() + after) / (HORIZON_DAYS - 1));
            }
            sum += WEIGHTS[i] * cost;
        }
        return sum;
    }
}
