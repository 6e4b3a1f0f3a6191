package io.github.weirwise.setup;

import io.github.weirwise.report.Bounds;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.WrongValueException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Head (mm) of a pump against flow (L/h), straight between the points that its data sheet gives.
 *
 * @param points at least two; the first at flow 0; flows rise, heads fall
 */
public record PumpCurve(List<PumpPoint> points) {
    /**
     * Sorts by flow.
     *
     * @throws IllegalArgumentException with fewer than two points, without one at flow 0, or if heads do not fall
     */
    public PumpCurve {
        List<PumpPoint> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparingDouble(PumpPoint::flowLitresPerHour));
        points = List.copyOf(sorted);
        if (points.size() < 2 || points.get(0).flowLitresPerHour() != 0) {
            throw new WrongValueException(
                    "points", Phrase.of("setup.wrong.fewPoints"), Phrase.of("setup.try.greatestHead"));
        }
        for (int i = 1; i < points.size(); i++) {
            requireFalling(points.get(i - 1), points.get(i));
        }
    }

    /** A curve through flow (L/h) and head (mm) pairs, in that order. */
    public static PumpCurve of(double... flowsAndHeads) {
        if (flowsAndHeads.length % 2 != 0) {
            throw new IllegalArgumentException("give flow and head in pairs, got " + flowsAndHeads.length + " numbers");
        }
        List<PumpPoint> points = new ArrayList<>();
        for (int i = 0; i < flowsAndHeads.length; i += 2) {
            points.add(new PumpPoint(flowsAndHeads[i], flowsAndHeads[i + 1]));
        }
        return new PumpCurve(points);
    }

    /** Head at flow 0, mm. */
    public double shutOffHeadMm() {
        return points.get(0).headMm();
    }

    /** Greatest flow that the curve tells of, L/h. */
    public double greatestFlowLitresPerHour() {
        return points.get(points.size() - 1).flowLitresPerHour();
    }

    /** Head at a flow, mm; beyond the last point the last point's head. */
    public double headMm(double flowLitresPerHour) {
        int i = 1;
        while (i < points.size() - 1 && flowLitresPerHour > points.get(i).flowLitresPerHour()) {
            i++;
        }
        PumpPoint low = points.get(i - 1);
        PumpPoint high = points.get(i);
        double share =
                (flowLitresPerHour - low.flowLitresPerHour()) / (high.flowLitresPerHour() - low.flowLitresPerHour());
        return low.headMm() + Math.max(0, Math.min(1, share)) * (high.headMm() - low.headMm());
    }

    private static void requireFalling(PumpPoint before, PumpPoint after) {
        if (!(after.flowLitresPerHour() > before.flowLitresPerHour() && after.headMm() < before.headMm())) {
            throw new WrongValueException(
                    "points",
                    Phrase.of("setup.wrong.rising", point(before), point(after)),
                    Phrase.of("setup.try.readTheCurve"));
        }
    }

    private static Phrase point(PumpPoint point) {
        return Phrase.of(
                "setup.pumpPoint",
                Bounds.of(point.flowLitresPerHour(), Unit.LITRE_PER_HOUR),
                Bounds.of(point.headMm(), Unit.MILLIMETRE));
    }
}
