package io.github.weirwise.diagnosis;

import io.github.weirwise.report.Range;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Sheet;
import io.github.weirwise.unit.Sum;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * One branch of the belief: certain parts came faulty, all else is followed by one normal distribution. Readings are taken in one
 * after the other; a reading far off counts less (Huber 1964), and lets what can change at once be less certain.
 */
final class Track {
    /** Share of readings that are gross, and how much wider those scatter. */
    private static final double GROSS_SHARE = 0.04;

    private static final double GROSS_WIDTH = 4;
    /** Something that nothing explains is as unlikely as this in every branch. */
    private static final double LEAST_DENSITY = 1e-12;

    /** From so many standard deviations on a reading counts less. */
    private static final double HUBER = 2.5;
    /** From so many standard deviations on a reading makes room for something new; part of what is over goes to it. */
    private static final double NEWS = 1.5;

    /** Between x1.01 and x1.6 a millimetre any unit is taken to answer. */
    private static final double LEAST_SLOPE_LOG = Math.log(0.01);

    private static final double MOST_SLOPE_LOG = Math.log(0.47);
    private static final double MOST_AIR_EXPONENT = 15;
    /** Seven times as fast or slow as usual is the farthest that a part's pace is taken to go. */
    private static final double MOST_PACE_LOG = 2;

    /** No limit on this side. */
    private static final double FAR = 99;

    private static final double NEWS_SHARE = 0.3;
    private static final double FOAM_NEWS_SHARE = 0.1;
    private static final double PART_NEWS_SHARE = 0.5;
    /** A part that takes less than this from the logarithm of the amount is no explanation of a fall. */
    private static final double LEAST_PER_SIZE = 0.3;
    /** A part is not at fault by more than this because of one amount or level. */
    private static final double MOST_NEW_SIZE_SD = 0.4;

    private final Moments moments;
    private final boolean pair;
    private double logWeight;
    /** How what is being read goes with each component, its covariance with each, and its variance as the branch knows it. */
    private final double[] gradient = new double[State.SIZE];

    private final double[] with = new double[State.SIZE];
    private double known;

    Track(Set<Part> faulty, Sheet sheet, double logWeight) {
        this.moments = new Moments();
        this.pair = faulty.size() > 1;
        this.logWeight = logWeight;
        Prior.fill(moments, sheet, faulty);
    }

    private Track(Track other) {
        moments = other.moments.copy();
        pair = other.pair;
        logWeight = other.logWeight;
    }

    Track copy() {
        return new Track(this);
    }

    /** A branch as numbers. */
    record Kept(boolean pair, double logWeight, Moments.Kept moments) {}

    Kept kept() {
        return new Kept(pair, logWeight, moments.kept());
    }

    /** The branch that was kept. */
    Track(Kept kept) {
        moments = new Moments(kept.moments);
        pair = kept.pair;
        logWeight = kept.logWeight;
    }

    Moments moments() {
        return moments;
    }

    /** Whether two parts came faulty in it. */
    boolean pair() {
        return pair;
    }

    double logWeight() {
        return logWeight;
    }

    void forward(double days) {
        Prior.forward(moments, days);
    }

    /** Keeps sizes from falling below clean; once after all that one visit read. */
    void settle() {
        for (int i = State.PARTS; i < State.PACES; i++) {
            moments.notBelowZero(i);
        }
        for (int i = State.PACES; i < State.SIZE; i++) {
            moments.hold(i, -MOST_PACE_LOG, MOST_PACE_LOG);
        }
        moments.hold(State.SLOPE, LEAST_SLOPE_LOG, MOST_SLOPE_LOG);
        moments.hold(State.AIR_EXPONENT, 0, MOST_AIR_EXPONENT);
        moments.hold(State.FOAM, -2 * SumModel.MOST, 2 * SumModel.MOST);
        moments.hold(State.PASSING, -2 * SumModel.MOST, 2 * SumModel.MOST);
    }

    /** A number that shows a sum, seen by a reader with a habit at position {@code eye}; -1 for none. */
    void sum(SumModel model, Sum sum, double factor, double value, double sd, int eye) {
        double predicted = expected(model, sum, factor, eye);
        if (sum != Sum.AMOUNT) {
            sumNews(sum, value - predicted, sd);
        }
        take(predicted, value, sd);
    }

    private double expected(SumModel model, Sum sum, double factor, int habit) {
        double expected = factor * model.value(sum, moments.mean(), gradient);
        for (int i = 0; i < State.SIZE; i++) {
            gradient[i] *= factor;
        }
        if (habit >= 0) {
            gradient[habit] += 1;
            expected += moments.mean(habit);
        }
        project();
        return expected;
    }

    /** An amount over an interval in which things may have changed. */
    void amount(SumModel model, Interval interval, double value, double sd) {
        double raw = model.rawAmount(moments.mean(), gradient);
        double at = straightened(interval, value);
        double spread = Math.sqrt(sd * sd + interval.doubtSd() * interval.doubtSd()) / SumModel.bend(at);
        project();
        news(at - raw, spread);
        take(raw, at, spread);
    }

    /** An amount that is at least, or at most, this much. */
    void amountBeyond(SumModel model, Interval interval, double limit, boolean atLeast, double sd) {
        double raw = model.rawAmount(moments.mean(), gradient);
        double at = straightened(interval, limit);
        double spread = Math.sqrt(sd * sd + interval.doubtSd() * interval.doubtSd()) / SumModel.bend(at);
        double missing = atLeast ? at - raw : raw - at;
        project();
        if (missing > 0) {
            news(missing, spread);
        }
        between(raw, atLeast ? at : -FAR, atLeast ? FAR : at, spread);
    }

    /** A reading of the amount as the unit stands now, before it is bent; the gradient takes up what earlier weirs do to it. */
    private double straightened(Interval interval, double log) {
        Arrays.fill(with, 0);
        double shift = interval.shift(Math.exp(moments.mean(State.SLOPE)), with);
        double at = SumModel.unbent(log - shift);
        gradient[State.SLOPE] += with[State.SLOPE] / SumModel.bend(at);
        return at;
    }

    /** A word that stands for a range of a sum. */
    void word(SumModel model, Sum sum, double factor, Range range, double sd, int tone) {
        if (sum == Sum.AMOUNT && factor == 1 && tone < 0) {
            double raw = model.rawAmount(moments.mean(), gradient);
            double low = SumModel.unbent(range.low());
            double high = SumModel.unbent(range.high());
            double nearest = Math.max(low, Math.min(high, raw));
            project();
            between(raw, low, high, sd / SumModel.bend(nearest));
            return;
        }
        double predicted = expected(model, sum, factor, tone);
        between(predicted, range.low(), range.high(), sd);
    }

    /** A size of a part as seen. */
    void part(Part part, double size, double sd) {
        int at = State.of(part);
        one(at);
        take(moments.mean(at), size, sd);
    }

    /** A part that is no worse than a size. */
    void partAtMost(Part part, double most, double sd) {
        int at = State.of(part);
        one(at);
        between(moments.mean(at), -1, most, sd);
    }

    /** What passes, as a look at the water or at the bottles tells it. */
    void passing(double log, double sd) {
        one(State.PASSING);
        take(moments.mean(State.PASSING), log, sd);
    }

    /** What is read is one component by itself. */
    private void one(int at) {
        Arrays.fill(gradient, 0);
        gradient[at] = 1;
        moments.row(at, with);
        known = Math.max(0, with[at]);
    }

    private void project() {
        known = Math.max(0, moments.project(gradient, with));
    }

    private double variance() {
        return Math.max(0, Moments.dot(gradient, with));
    }

    /** Makes room for something new in one component, in the middle of taking in a reading. */
    private void room(int at, double variance) {
        moments.noise(at, variance);
        with[at] += variance * gradient[at];
    }

    /** What passes is known to have been stirred. */
    void stirred(double meanLog, double sd) {
        moments.shift(State.PASSING, meanLog);
        moments.noise(State.PASSING, sd * sd);
    }

    /** An amount that nothing slow explains: something that passes, or a step of the foaminess. */
    private void news(double innovation, double sd) {
        double total = known + sd * sd;
        double over = innovation * innovation - NEWS * NEWS * total;
        if (over > 0) {
            room(State.PASSING, NEWS_SHARE * over);
            room(State.FOAM, FOAM_NEWS_SHARE * over);
            if (innovation < 0) {
                partsNews(over);
            }
            known = variance();
        }
    }

    /** Less than anything slow explains: any part that takes from the amount may have gone bad of late. */
    private void partsNews(double over) {
        for (int at = State.PARTS; at < State.PACES; at++) {
            double perSize = gradient[at];
            if (perSize < -LEAST_PER_SIZE) {
                double size = PART_NEWS_SHARE * over / (perSize * perSize);
                room(at, Math.min(MOST_NEW_SIZE_SD * MOST_NEW_SIZE_SD, size));
            }
        }
    }

    /**
     * A level, head, flow or air that nothing slow explains: a plate that slipped, a vent or a strainer that blocked, a pad that
     * clogged, a line that kinked.
     */
    private void sumNews(Sum sum, double innovation, double sd) {
        double total = known + sd * sd;
        double over = innovation * innovation - NEWS * NEWS * total;
        if (over <= 0) {
            return;
        }
        if (sum == Sum.LEVEL) {
            room(State.OFFSET, 0.1 * over);
        }
        for (Part part : sum == Sum.LEVEL ? LEVEL_PARTS : Part.SERVICEABLE) {
            double perSize = gradient[State.of(part)];
            if (perSize != 0) {
                double size = Math.min(MOST_NEW_SIZE_SD * MOST_NEW_SIZE_SD, 0.3 * over / (perSize * perSize));
                room(State.of(part), size);
            }
        }
        known = variance();
    }

    private static final List<Part> LEVEL_PARTS = Part.SERVICEABLE.stream()
            .filter(part -> part.worst().levelMm() != 0 || part.worst().flowLog() > 0)
            .toList();

    private void take(double predicted, double value, double sd) {
        double total = known + sd * sd;
        double innovation = value - predicted;
        double z = innovation / Math.sqrt(total);
        logWeight += Math.log(LEAST_DENSITY
                + (1 - GROSS_SHARE) * Normal.density(z) / Math.sqrt(total)
                + GROSS_SHARE * Normal.density(z / GROSS_WIDTH) / (GROSS_WIDTH * Math.sqrt(total)));
        if (Math.abs(z) > HUBER) {
            double wider = sd * Math.abs(z) / HUBER;
            total = known + wider * wider;
        }
        moments.update(with, total, innovation, 1);
    }

    /** A value known to lie between two limits, give or take {@code sd}: the moments of the cut normal. */
    private void between(double predicted, double low, double high, double sd) {
        double total = known + sd * sd;
        double root = Math.sqrt(total);
        double a = (low - predicted) / root;
        double b = (high - predicted) / root;
        double bellA = Normal.bell(a);
        double bellB = Normal.bell(b);
        double inside = Math.max(1e-6, Normal.below(b, bellB) - Normal.below(a, bellA));
        logWeight += Math.log((1 - GROSS_SHARE) * inside + GROSS_SHARE * 0.2);
        double densityA = bellA / Normal.ROOT_2_PI;
        double densityB = bellB / Normal.ROOT_2_PI;
        double mean = inside > 1e-5 ? (densityA - densityB) / inside : a > 0 ? a : b;
        double spread = 1 + (bounded(a, densityA) - bounded(b, densityB)) / inside - mean * mean;
        double far = Math.max(0, Math.max(a, -b));
        double trust = far > HUBER ? HUBER / far : 1;
        double taken = Math.max(0, Math.min(0.95, 1 - spread)) * trust;
        moments.update(with, total, Math.max(-6, Math.min(6, mean)) * root * trust, taken);
    }

    private static double bounded(double z, double density) {
        return Math.abs(z) > 30 ? 0 : z * density;
    }

    /** Chance that a part's size is over a limit. */
    double chanceOver(Part part, double size) {
        int at = State.of(part);
        return 1 - Normal.below((size - moments.mean(at)) / moments.sd(at));
    }
}
