package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Outlook;
import io.github.weirwise.diagnosis.Possibility;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.report.Times;
import io.github.weirwise.unit.Part;
import java.util.ArrayList;
import java.util.Arrays;
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

    /** Worth of what is found and put right later; each change more on the way there costs a little. */
    private static final double LATER = 0.9;

    /** Chance that a single change does it once it is known what is the matter. */
    private static final double AT_ONCE = 0.75;

    private static final double ONE_MORE = 0.04;
    /** Worth of a trouble that is still there when a person's patience is spent. */
    private static final double LOST = 0.25;
    /** What a day's delay costs, and one that teaches nothing. */
    private static final double DELAY = 0.03;

    private static final double VAIN_DELAY = 0.15;
    /** What holding off target costs once waiting has taught nothing for long. */
    private static final double WAITED = 0.4;
    /** From this chance on that something passes a day's wait teaches its fill. */
    private static final double HOPE_FROM = 0.2;
    /** Worth of waiting for what passes by itself. */
    private static final double PASSES = 0.97;
    /** Worth of leaving a fault that does not show. */
    private static final double LATENT = 0.7;

    /** Worth of having come closer when there is no patience left for another move. */
    private static final double CLOSER = 0.6;

    /** Worth of having moved away from the target. */
    private static final double FARTHER = 0.1;

    private static final double MOVE_EFFORT = 0.03;
    private static final double EFFORT_PER_MM = 0.002;
    private static final double SERVICE_EFFORT = 0.05;
    /** What it costs to touch a unit that is on target. */
    private static final double TINKERING = 0.16;
    /** What a move that hides a fault costs. */
    private static final double HIDES = 0.7;
    /** What a service of a sound part costs besides its effort. */
    private static final double IN_VAIN = 0.15;
    /** What another day of running over costs. */
    private static final double RUNS_OVER = 0.4;
    /** Worth of a move that fills the cup. */
    private static final double FLOODS = 0.05;

    private static final double[] MOVES_MM = {
        -40, -32, -26, -20, -16, -12, -10, -8, -6.5, -5, -4, -3, -2, 2, 3, 4, 5, 6, 7, 8, 10, 13, 16, 20
    };

    /** Nobody likes to take apart what was just found good. */
    private static final double FOUND_GOOD = 0.25;

    private final Situation situation;
    private final Band band;
    private final boolean waited;
    private final List<Step> steps = new ArrayList<>();
    private final List<Worths> worths = new ArrayList<>();
    private final Questions questions;
    private final int changesLeft;
    private final double[] even;
    private final int[] evenRanks;

    /**
     * What a step is worth under each possibility.
     *
     * @param now worth where the step settles the matter; where it does not, what is added to the worth of going on
     * @param open where the matter stays open
     * @param answers the question that is answered by the step, or -1
     * @param changes how many changes it takes, 0 or 1
     */
    private record Worths(double[] now, boolean[] open, int answers, int changes) {}

    StepValues(Situation situation) {
        this.situation = situation;
        this.band = Band.of(situation.unit());
        this.waited = new Persistence(situation).waitedLong();
        this.questions = new Questions(situation.sample());
        this.changesLeft = new Patience(situation).changesLeft();
        this.even = new double[situation.sample().size()];
        Arrays.fill(even, 1.0 / even.length);
        this.evenRanks = Questions.ranks(questions.shares(even));
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

    /** The questions that the possibilities of the sample answer. */
    Questions questions() {
        return questions;
    }

    /** Worth of a step under a possibility, both by index, where all possibilities count alike. */
    double worth(int step, int possibility) {
        return worth(worths.get(step), possibility, evenRanks);
    }

    private double worth(Worths each, int possibility, int[] ranks) {
        if (!each.open()[possibility]) {
            return each.now()[possibility];
        }
        int question = questions.of(possibility);
        int rank = ranks[question];
        if (each.answers() >= 0 && ranks[each.answers()] < rank) {
            rank--;
        }
        return each.now()[possibility] + goingOn(rank, changesLeft - each.changes());
    }

    /** Worth of having to put right what is behind the question with this rank, with so many changes left. */
    static double goingOn(int rank, int changes) {
        if (rank >= changes) {
            return LOST;
        }
        double found = LATER - ONE_MORE * (rank + 1);
        return rank + 1 < changes ? found : AT_ONCE * found + (1 - AT_ONCE) * LOST;
    }

    /**
     * Expected worth of a step.
     *
     * @param weights one per possibility of the sample; need not add up to 1
     * @param ranks of the questions by these weights
     * @return worth times the sum of the weights
     */
    double expected(int step, double[] weights, int[] ranks) {
        Worths each = worths.get(step);
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * worth(each, i, ranks);
        }
        return sum;
    }

    /** Expected worth of a step where all possibilities count alike. */
    double mean(int step) {
        return expected(step, even, evenRanks);
    }

    /** The same weight for each possibility. */
    double[] even() {
        return even.clone();
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
        int count = situation.sample().size();
        double[] now = new double[count];
        boolean[] open = new boolean[count];
        // A day's wait only teaches something where something may pass by itself; else it is mere delay.
        double passing = situation.sample().stream()
                        .filter(each -> each.passing(PASSING))
                        .count()
                / (double) count;
        double delay = waited ? WAITED : VAIN_DELAY - (VAIN_DELAY - DELAY) * Math.min(1, passing / HOPE_FROM);
        for (int i = 0; i < count; i++) {
            Possibility each = situation.sample().get(i);
            Outlook outlook = situation.outlooks().get(i);
            boolean faulty = !each.faultyParts(FAULT).isEmpty();
            if (!faulty && each.passing(PASSING)) {
                now[i] = PASSES;
            } else if (band.holds(outlook)) {
                // A fault that leaves the unit on target will show itself in time.
                now[i] = faulty ? LATENT : band.comfort(outlook);
            } else {
                open[i] = true;
                now[i] = -delay - (band.overflows(outlook) ? RUNS_OVER : 0);
            }
        }
        steps.add(new Step.Hold(
                Times.later(situation.now(), situation.options().clocks().judge()), HoldReason.WITHIN_NOISE));
        worths.add(new Worths(now, open, -1, 0));
    }

    private void addMove(double byMm) {
        double crestMm = situation.unit().weir().clampMm(situation.crestMm() + byMm);
        double realMm = Math.round(2 * (crestMm - situation.crestMm())) / 2.0;
        if (Math.abs(realMm - byMm) > 0.25) {
            return;
        }
        int count = situation.sample().size();
        double[] now = new double[count];
        boolean[] open = new boolean[count];
        for (int i = 0; i < count; i++) {
            Possibility each = situation.sample().get(i);
            Outlook before = situation.outlooks().get(i);
            Outlook after = each.ahead(crestMm, situation.judgeHours(), null);
            double effort = (band.holds(before) ? TINKERING : MOVE_EFFORT) + EFFORT_PER_MM * Math.abs(byMm);
            boolean faulty = !each.faultyParts(FAULT).isEmpty();
            if (band.overflows(after) && !(band.overflows(before) && byMm < 0)) {
                now[i] = FLOODS;
            } else if (faulty && !each.passing(PASSING)) {
                open[i] = true;
                now[i] = -HIDES - effort;
            } else if (faulty || each.passing(PASSING)) {
                now[i] = -effort;
            } else {
                now[i] = tuned(before, after) - effort;
            }
        }
        steps.add(new Step.MoveWeir(byMm, situation.crestMm() + byMm, false));
        worths.add(new Worths(now, open, Questions.WEIR, 1));
    }

    /** Worth of having moved the weir of a sound unit. */
    private double tuned(Outlook before, Outlook after) {
        if (band.holds(after)) {
            return band.comfort(after);
        }
        double gain = band.distance(before) - band.distance(after);
        if (gain < 0) {
            return FARTHER;
        }
        double again = Math.max(CLOSER, goingOn(0, changesLeft - 1));
        if (band.overflows(before)) {
            // Far too wet: any way down is a way out, but one that ends far too dry only changes the trouble.
            boolean stillWet = band.overflows(after) || after.logAmount() > band.high();
            double progress = 1 - band.distance(after) / Math.max(0.1, band.distance(before));
            return Math.min(again, stillWet ? 0.4 + 0.3 * progress : Math.max(0.1, 0.4 - 0.12 * band.distance(after)));
        }
        return Math.max(0.6 * again, again - 0.08 * band.distance(after));
    }

    private void addService(Part part) {
        boolean foundGood =
                new Looked(situation).found(part).filter(Finding.GOOD::equals).isPresent();
        double effort = SERVICE_EFFORT + (foundGood ? FOUND_GOOD : 0);
        int count = situation.sample().size();
        double[] now = new double[count];
        boolean[] open = new boolean[count];
        for (int i = 0; i < count; i++) {
            Possibility each = situation.sample().get(i);
            Outlook before = situation.outlooks().get(i);
            Set<Part> faulty = each.faultyParts(FAULT);
            if (faulty.contains(part)) {
                Outlook after = each.ahead(situation.crestMm(), 2 * situation.judgeHours(), part);
                boolean done = faulty.size() == 1 && band.holds(after);
                now[i] = (done ? 1 : goingOn(0, changesLeft - 1)) - effort;
            } else if (faulty.isEmpty() && each.passing(PASSING)) {
                now[i] = PASSES - IN_VAIN - effort;
            } else if (band.holds(before)) {
                now[i] = (faulty.isEmpty() ? band.comfort(before) : LATENT) - IN_VAIN - effort;
            } else {
                open[i] = true;
                now[i] = -IN_VAIN - effort - (band.overflows(before) ? RUNS_OVER : 0);
            }
        }
        steps.add(new Step.ServicePart(part));
        worths.add(new Worths(now, open, Questions.about(part), 1));
    }
}
