package io.github.weirwise.diagnosis;

/**
 * What one possibility expects at one reading after the other, and what it expects to have gathered in the cup meanwhile: over
 * stretches with other settings, without settled foam, and while a cause grew. A law point that an earlier reading has already
 * asked for is not asked for again. One possibility, one thread.
 */
final class CupCourse {
    /** A cause that changes its size by less than this while the cup fills is taken as steady. */
    private static final double GREW = 0.02;
    /** A reading this close to the start of the cup's time stands for it. */
    private static final double NEAR_HOURS = 3;
    /** Doubt of an amount by its change while a cause grew: nobody knows just when and how fast it did. */
    private static final double DOUBTED = 0.35;
    /** Doubt of an amount by what the unknown lag after a change makes of it, from quickest to slowest. */
    private static final double LAG_DOUBT = 0.5;
    /** An amount, as a share of the target's, far below what can be seen. */
    private static final double LEAST = 1e-6;

    private final Possibility possibility;
    private final Timeline timeline;

    private double hours = Double.NEGATIVE_INFINITY;
    private int segment = -1;
    private double firstSize;
    private double secondSize;
    private View view;
    /** The last view of the stretch before the present one. */
    private View former;

    private int formerSegment = -1;
    private View cup;
    private double doubt;

    CupCourse(Possibility possibility, Timeline timeline) {
        this.possibility = possibility;
        this.timeline = timeline;
    }

    /** Goes on to a reading; they come in the order of time. */
    void goTo(Evidence reading) {
        double before = view == null ? 0 : view.outlook().logAmount();
        boolean beforeHolds =
                segment == reading.segment() && Math.abs(hours - (reading.hours() - reading.spanHours())) < NEAR_HOURS;
        double firstNow = possibility.firstSizeAt(reading.hours());
        double secondNow = possibility.secondSizeAt(reading.hours());
        if (segment != reading.segment() || firstNow != firstSize || secondNow != secondSize) {
            if (segment != reading.segment()) {
                former = view;
                formerSegment = segment;
            }
            segment = reading.segment();
            firstSize = firstNow;
            secondSize = secondNow;
            view = possibility.view(timeline.segments().get(segment), reading.hours(), firstNow, secondNow);
        }
        hours = reading.hours();
        doubt = reading.unsettled();
        double now = view.outlook().logAmount();
        if (grew(reading)) {
            double early = beforeHolds ? before : atStart(reading);
            doubt = Math.max(doubt, Math.min(1, DOUBTED * Math.abs(now - early)));
            cup = view.withAmount(gathered(reading, meanOfExponential(early, now)));
        } else if (!reading.earlier().isEmpty() || doubt > 0) {
            cup = view.withAmount(gathered(reading, Math.exp(now)));
        } else {
            cup = view;
        }
    }

    /** What is to be seen at the moment of the reading. */
    View view() {
        return view;
    }

    /** The same, with the amount that should be in the cup. */
    View cup() {
        return cup;
    }

    /** How much the cup's amount and darkness are in doubt, from 0. */
    double doubt() {
        return doubt;
    }

    private boolean grew(Evidence reading) {
        double from = reading.hours() - reading.spanHours();
        return Math.abs(possibility.firstSizeAt(from) - firstSize) > GREW
                || Math.abs(possibility.secondSizeAt(from) - secondSize) > GREW;
    }

    private double atStart(Evidence reading) {
        return settled(segment, reading.hours() - reading.spanHours());
    }

    /** Mean of an amount whose logarithm goes in a straight line. */
    private static double meanOfExponential(double early, double late) {
        double change = late - early;
        return Math.abs(change) < 1e-3 ? Math.exp(0.5 * (early + late)) : (Math.exp(late) - Math.exp(early)) / change;
    }

    private double settled(int inSegment, double at) {
        Segment stretch = timeline.segments().get(inSegment);
        return possibility
                .at(stretch, stretch.settings().weirCrestMm(), at, null)
                .logAmount();
    }

    /** Logarithm of the amount that gathers over stretches with other settings and over times without settled foam. */
    private double gathered(Evidence reading, double ownAmount) {
        double quick = ownAmount;
        double slow = ownAmount;
        for (Evidence.Earlier earlier : reading.earlier()) {
            boolean known = former != null && earlier.segment() == formerSegment;
            double log = known ? former.outlook().logAmount() : settled(earlier.segment(), reading.hours());
            double more = Math.exp(log) - ownAmount;
            quick += earlier.least() * more;
            slow += earlier.most() * more;
        }
        double quickLog = Math.log(Math.max(quick, 0) + LEAST);
        double slowLog = Math.log(Math.max(slow, 0) + LEAST);
        doubt = Math.max(doubt, LAG_DOUBT * Math.abs(slowLog - quickLog));
        return 0.5 * (quickLog + slowLog) + Math.log(1 - Belief.UNSETTLED_LOSS * reading.unsettled());
    }
}
