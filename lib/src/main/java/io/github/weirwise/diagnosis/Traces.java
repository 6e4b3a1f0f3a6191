package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Reason;
import io.github.weirwise.unit.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * By how much each of the newest observations moved what is believed of the parts: the evidence that a person is shown, one line
 * for each instrument, with what was expected. Changed in place.
 *
 * @param traces in the order in which they came
 */
record Traces(List<Trace> traces) {
    /** How many are kept. */
    static final int KEPT = 40;

    private static final int SHOWN = 4;
    /** Readings that moved a part's size by less are not evidence worth a line. */
    private static final double LEAST = 0.03;

    private static final double STRONG = 0.15;

    /**
     * An observation and what it did to the sizes of the parts.
     *
     * @param expected what was expected just before, as {@link Expected} tells it
     */
    record Trace(Observation seen, Optional<Double> expected, double[] moved) {
        private Trace without(int part) {
            double[] others = moved.clone();
            others[part] = 0;
            return new Trace(seen, expected, others);
        }
    }

    /** All that one instrument did to one part, and the reading that did most of it. */
    private record Evidence(double moved, Trace plainest) {}

    Traces copy() {
        return new Traces(new ArrayList<>(traces));
    }

    void add(Observation seen, Optional<Double> expected, double[] before, double[] after) {
        double[] moved = new double[State.PART_COUNT];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = after[State.PARTS + i] - before[State.PARTS + i];
        }
        shown(seen)
                .map(Part.SERVICEABLE::indexOf)
                .filter(at -> at >= 0)
                .ifPresent(at -> moved[at] = Math.max(0, moved[at]));
        traces.add(new Trace(seen, expected, moved));
        if (traces.size() > KEPT) {
            traces.remove(0);
        }
    }

    /** A part that is plainly shown at fault: that is no evidence against it, though even worse was expected. */
    private static Optional<Part> shown(Observation seen) {
        if (seen instanceof Observation.Inspection look && look.finding() != Finding.GOOD) {
            return Optional.of(look.part());
        }
        return seen instanceof Observation.LevelBeyondWeir beyond && beyond.mm() >= 0
                ? Optional.of(Part.FILTER_PAD)
                : Optional.empty();
    }

    /** After a service what was seen before says nothing of the part any more. */
    void serviced(Part part) {
        int at = Part.SERVICEABLE.indexOf(part);
        if (at >= 0) {
            traces.replaceAll(each -> each.without(at));
        }
    }

    /** The lines for and against a part at fault, strongest first; none for what is not a part. */
    List<Reason> of(Cause cause) {
        return cause.part().map(this::of).orElse(List.of());
    }

    private List<Reason> of(Part part) {
        int at = Part.SERVICEABLE.indexOf(part);
        Map<Instrument, Evidence> all = new EnumMap<>(Instrument.class);
        for (Trace each : traces) {
            if (!(each.seen() instanceof Observation.Inspection look) || look.part() == part) {
                all.merge(Instrument.of(each.seen()), new Evidence(each.moved()[at], each), (a, b) -> sum(a, b, at));
            }
        }
        return all.values().stream()
                .filter(each -> Math.abs(each.moved()) >= LEAST)
                .sorted(Comparator.comparingDouble(each -> -Math.abs(each.moved())))
                .limit(SHOWN)
                .map(each -> Reason.of(Phrase.of(key(each.moved()), line(each.plainest()))))
                .toList();
    }

    private static Evidence sum(Evidence earlier, Evidence later, int at) {
        double moved = earlier.moved() + later.moved();
        double side = Math.signum(moved);
        boolean plainer =
                side * later.plainest().moved()[at] >= side * earlier.plainest().moved()[at];
        return new Evidence(moved, plainer ? later.plainest() : earlier.plainest());
    }

    /** What was seen and, since only the difference is evidence, what was expected. */
    private static Phrase line(Trace trace) {
        Phrase seen = ObservationWords.of(trace.seen());
        return trace.expected()
                .map(number -> Expected.line(seen, trace.seen(), number))
                .orElse(seen);
    }

    private static String key(double moved) {
        if (Math.abs(moved) >= STRONG) {
            return moved > 0 ? "diagnosis.for.strongly" : "diagnosis.against.strongly";
        }
        return moved > 0 ? "diagnosis.for.weakly" : "diagnosis.against.weakly";
    }
}
