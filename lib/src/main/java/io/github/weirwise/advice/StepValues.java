package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Outlook;
import io.github.weirwise.diagnosis.Possibility;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Part;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What each step is worth under each possibility: roughly the chance that the unit ends on target with its fault dealt
 * with in few changes, seen from after the step.
 *
 * <p>The look ahead is two steps deep in effect: a step that leaves the unit off target, but in a state from which the
 * next step will be well informed, keeps part of its worth.
 */
final class StepValues {
    /** A fault larger than this share of its worst is put right before the weir is touched. */
    static final double FAULT = 0.12;
    /** Something passing acts noticeably from this momentary size on. */
    static final double PASSING = 0.02;

    /** What a day's delay costs. */
    private static final double DELAY = 0.04;

    private static final double HOPE_FROM = 0.2;
    /** What is left of the worth of holding off target once waiting has taught nothing. */
    private static final double HELD_IN_VAIN = 0.5;
    /** What it costs to touch a unit that is on target. */
    private static final double TINKERING = 0.16;
    /** Worth of a move that hides a fault, or is made while something passes. */
    private static final double HIDES = -0.05;
    /** What a change in vain costs besides its effort. */
    private static final double IN_VAIN = 0.12;

    private static final double[] MOVES_MM = {
        -40, -32, -26, -20, -16, -12, -10, -8, -6.5, -5, -4, -3, -2, 2, 3, 4, 5, 6, 7, 8, 10, 13, 16, 20
    };

    /** Nobody likes to take apart what was just found good. */
    private static final double FOUND_GOOD = 0.25;

    private final Situation situation;
    private final Band band;
    private final boolean waited;
    private final List<Step> steps = new ArrayList<>();
    private final List<double[]> worths = new ArrayList<>();

    StepValues(Situation situation) {
        this.situation = situation;
        this.band = Band.of(situation.unit());
        this.waited = new Persistence(situation).waitedLong();
        for (double move : MOVES_MM) {
            addMove(move);
        }
        for (Part part : servicedParts()) {
            addService(part);
        }
        addHold();
    }

    List<Step> steps() {
        return steps;
    }

    /** Worth of a step under a possibility, both by index. */
    double worth(int step, int possibility) {
        return worths.get(step)[possibility];
    }

    double mean(int step) {
        double sum = 0;
        for (double worth : worths.get(step)) {
            sum += worth;
        }
        return sum / situation.sample().size();
    }

    /** Index of the step with the greatest mean worth. */
    int best() {
        int best = 0;
        for (int step = 1; step < steps.size(); step++) {
            if (mean(step) > mean(best)) {
                best = step;
            }
        }
        return best;
    }

    private Set<Part> servicedParts() {
        Set<Part> parts = EnumSet.noneOf(Part.class);
        for (Possibility each : situation.sample()) {
            parts.addAll(each.faultyParts(0.1));
        }
        return parts;
    }

    private void addHold() {
        double later = bestUnlessPassing() - DELAY;
        // A day's wait only teaches something where something may pass by itself; else it is mere delay.
        double passing = situation.sample().stream()
                        .filter(each -> each.passing(PASSING))
                        .count()
                / (double) situation.sample().size();
        double hope = waited ? 0 : Math.min(1, passing / HOPE_FROM);
        double[] worth = new double[situation.sample().size()];
        for (int i = 0; i < worth.length; i++) {
            Possibility each = situation.sample().get(i);
            double now = hold(each, situation.outlooks().get(i));
            worth[i] = each.passing(PASSING) ? now : now + hope * Math.max(0, later - now);
        }
        steps.add(
                new Step.Hold(situation.now().plus(situation.options().clocks().judge()), HoldReason.WITHIN_NOISE));
        worths.add(worth);
    }

    /** Worth of the best other step where nothing passes by itself: what can still be done a day later. */
    private double bestUnlessPassing() {
        double best = 0;
        for (double[] worth : worths) {
            double sum = 0;
            int count = 0;
            for (int i = 0; i < worth.length; i++) {
                if (!situation.sample().get(i).passing(PASSING)) {
                    sum += worth[i];
                    count++;
                }
            }
            best = count == 0 ? best : Math.max(best, sum / count);
        }
        return best;
    }

    private double hold(Possibility each, Outlook now) {
        boolean faulty = !each.faultyParts(FAULT).isEmpty();
        if (!faulty && each.passing(PASSING)) {
            return 0.97;
        }
        if (band.holds(now)) {
            // A fault that leaves the unit on target will show itself in time.
            return faulty ? 0.7 : band.comfort(now);
        }
        double off = faulty ? 0.52 : Math.max(0.25, 0.52 - 0.15 * band.distance(now));
        return waited ? HELD_IN_VAIN * off : off;
    }

    private void addMove(double byMm) {
        double crestMm = situation.unit().weir().clampMm(situation.crestMm() + byMm);
        double realMm = Math.round(2 * (crestMm - situation.crestMm())) / 2.0;
        if (Math.abs(realMm - byMm) > 0.25) {
            return;
        }
        double[] worth = new double[situation.sample().size()];
        for (int i = 0; i < worth.length; i++) {
            Possibility each = situation.sample().get(i);
            Outlook after = each.ahead(crestMm, situation.judgeHours(), null);
            worth[i] = move(each, situation.outlooks().get(i), after, byMm);
        }
        steps.add(new Step.MoveWeir(byMm, situation.crestMm() + byMm, false));
        worths.add(worth);
    }

    private double move(Possibility each, Outlook before, Outlook after, double byMm) {
        double effort = (band.holds(before) ? TINKERING : 0.03) + 0.002 * Math.abs(byMm);
        if (band.overflows(after) && !(band.overflows(before) && byMm < 0)) {
            return 0.05;
        }
        if (!each.faultyParts(FAULT).isEmpty() || each.passing(PASSING)) {
            return HIDES - effort;
        }
        if (band.holds(after)) {
            return band.comfort(after) - effort;
        }
        if (band.overflows(before)) {
            // Far too wet: any way down is a way out, but one that ends far too dry only changes the trouble.
            boolean stillWet = band.overflows(after) || after.logAmount() > band.high();
            double progress = 1 - band.distance(after) / Math.max(0.1, band.distance(before));
            return (stillWet ? 0.4 + 0.3 * progress : Math.max(0.1, 0.4 - 0.12 * band.distance(after))) - effort;
        }
        double gain = band.distance(before) - band.distance(after);
        return gain > 0 ? Math.max(0.55, 0.85 - 0.08 * band.distance(after)) - effort : 0.35 - effort;
    }

    private void addService(Part part) {
        boolean foundGood =
                new Looked(situation).found(part).filter(Finding.GOOD::equals).isPresent();
        double doubt = foundGood ? FOUND_GOOD : 0;
        double[] worth = new double[situation.sample().size()];
        for (int i = 0; i < worth.length; i++) {
            Possibility each = situation.sample().get(i);
            worth[i] = service(each, situation.outlooks().get(i), part) - doubt;
        }
        steps.add(new Step.ServicePart(part));
        worths.add(worth);
    }

    private double service(Possibility each, Outlook before, Part part) {
        double effort = 0.05;
        Set<Part> faulty = each.faultyParts(FAULT);
        if (faulty.contains(part)) {
            Outlook after = each.ahead(situation.crestMm(), 2 * situation.judgeHours(), part);
            double tuned = band.holds(after) ? 1 : 0.9;
            return (faulty.size() > 1 ? 0.8 : tuned) - effort;
        }
        // In vain: the fault, if there is one, is still there, and one more change has been made.
        return hold(each, before) - IN_VAIN - effort;
    }
}
