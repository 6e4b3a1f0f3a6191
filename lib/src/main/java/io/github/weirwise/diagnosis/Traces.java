package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Reason;
import io.github.weirwise.unit.Part;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** By how much each of the newest observations moved what is believed of the parts: the evidence that a person is shown. */
final class Traces {
    private static final int KEPT = 40;
    private static final int SHOWN = 4;
    /** A reading that moved a part's size by less is not evidence worth a line. */
    private static final double LEAST = 0.03;

    private static final double STRONG = 0.15;

    /** One of them. */
    record Trace(Instant at, Observation seen, double[] moved) {
        private Trace without(int part) {
            double[] others = moved.clone();
            others[part] = 0;
            return new Trace(at, seen, others);
        }
    }

    private final List<Trace> traces = new ArrayList<>();

    Traces() {}

    /** The traces that were kept. */
    Traces(List<Trace> kept) {
        traces.addAll(kept);
    }

    List<Trace> kept() {
        return traces;
    }

    Traces copy() {
        return new Traces(traces);
    }

    void add(Instant at, Observation seen, double[] before, double[] after) {
        double[] moved = new double[before.length];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = after[i] - before[i];
        }
        traces.add(new Trace(at, seen, moved));
        if (traces.size() > KEPT) {
            traces.remove(0);
        }
    }

    /** After a service what was seen before says nothing of the part any more. */
    void serviced(Part part) {
        int at = Part.SERVICEABLE.indexOf(part);
        if (at >= 0) {
            traces.replaceAll(each -> each.without(at));
        }
    }

    /** The strongest lines for and against a part at fault; none for what is not a part. */
    List<Reason> of(Cause cause) {
        if (cause.part().isEmpty()) {
            return List.of();
        }
        int at = Part.SERVICEABLE.indexOf(cause.part().get());
        return traces.stream()
                .filter(each -> Math.abs(each.moved()[at]) >= LEAST)
                .sorted(Comparator.comparingDouble(each -> -Math.abs(each.moved()[at])))
                .limit(SHOWN)
                .map(each -> Reason.of(Phrase.of(key(each.moved()[at]), ObservationWords.of(each.seen()))))
                .toList();
    }

    private static String key(double moved) {
        if (Math.abs(moved) >= STRONG) {
            return moved > 0 ? "diagnosis.for.strongly" : "diagnosis.against.strongly";
        }
        return moved > 0 ? "diagnosis.for.weakly" : "diagnosis.against.weakly";
    }
}
