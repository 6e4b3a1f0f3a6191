package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.diagnosis.Prospects;
import io.github.weirwise.report.Work;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Sum;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Weighs what can be done to the unit by what it costs over the next days: leave it, move the weir, service one part. */
final class Plan {
    /** Not to touch anything is preferred by this much: numbers this near are the same. */
    private static final double REST = 0.1;

    /** More parts than these are not cleaned on one day, for the bacteria's and the keeper's sake. */
    private static final int MOST_AT_A_VISIT = 4;

    /** A step is small: what is missing after it is seen tomorrow, and a flood costs more than a dry day. */
    static final int FARTHEST_UP_MM = 10;

    private static final int MOST_UP_MM = 25;
    private static final double LEVEL_SD_MM = 0.5;

    private static final int FARTHEST_DOWN_MM = 15;

    /** Something that can be done, and its expected cost. */
    record Option(double mm, Set<Part> parts, double cost) {
        boolean rests() {
            return mm == 0 && parts.isEmpty();
        }
    }

    private final Belief belief;
    private final double rest;
    private final Outlay outlay;
    private final double lowestMm;
    private final double highestMm;

    /**
     * What can be done, weighed.
     *
     * @param twiceOut whether two amounts in a row were read out of the band on one side: then nothing speaks for leaving it
     */
    Plan(Belief belief, Outlay outlay, boolean twiceOut) {
        this.belief = belief;
        this.rest = twiceOut ? 0 : REST;
        this.outlay = outlay;
        double crest = belief.settings().weirCrestMm();
        lowestMm = Math.min(
                0, Math.max(-FARTHEST_DOWN_MM, Math.ceil(belief.unit().weir().lowestCrestMm() - crest)));
        highestMm = Math.max(
                0,
                Math.min(farthestUpMm(belief), Math.floor(belief.unit().weir().highestCrestMm() - crest)));
    }

    /** From far under the wanted level half the way is still a small step. */
    private static double farthestUpMm(Belief belief) {
        double missing = belief.unit().target().submergenceMm()
                - belief.sum(Sum.LEVEL, LEVEL_SD_MM).mean();
        return Math.max(FARTHEST_UP_MM, Math.min(MOST_UP_MM, Math.floor(missing / 2)));
    }

    /** By how much doing nothing is preferred: nothing costs less than this under 0. */
    double rest() {
        return rest;
    }

    /** All options in some branches, the cheapest first. */
    List<Option> options(Prospects branches, Set<Part> mayService, boolean coarse) {
        Work.step();
        Outlay.Ahead ahead = outlay.ahead(branches);
        List<Option> all = new ArrayList<>();
        all.add(new Option(0, Set.of(), ahead.cost(0, Set.of()) - rest));
        for (double mm : moves(branches, coarse)) {
            all.add(new Option(mm, Set.of(), ahead.cost(mm, Set.of())));
        }
        if (!mayService.isEmpty()) {
            all.addAll(services(ahead, mayService));
        }
        all.sort(Comparator.comparingDouble(Option::cost));
        return all;
    }

    /** Each part by itself, and the parts that are best serviced at one visit: one after the other as long as that gets cheaper. */
    private List<Option> services(Outlay.Ahead ahead, Set<Part> mayService) {
        List<Option> all = new ArrayList<>();
        for (Part part : mayService) {
            all.add(new Option(0, Set.of(part), ahead.cost(0, Set.of(part))));
        }
        Option best = all.stream().min(Comparator.comparingDouble(Option::cost)).orElseThrow();
        for (int more = 1; more < MOST_AT_A_VISIT && more < mayService.size(); more++) {
            Option next = null;
            for (Part part : mayService) {
                if (!best.parts().contains(part)) {
                    Set<Part> both = EnumSet.copyOf(best.parts());
                    both.add(part);
                    double cost = ahead.cost(0, both);
                    if (next == null || cost < next.cost()) {
                        next = new Option(0, both, cost);
                    }
                }
            }
            all.add(next);
            best = next;
        }
        return all;
    }

    /** How far the weir would have to go to the aimed amount. */
    private double aimedMm(Prospects branches) {
        return (Outlay.aim() - branches.after(0, Set.of()).tomorrow().mean()) / Math.max(0.01, branches.slopePerMm());
    }

    /** The cheapest cost in some branches. */
    double best(Prospects branches, Set<Part> mayService) {
        Work.step();
        Outlay.Ahead ahead = outlay.ahead(branches);
        double best = ahead.cost(0, Set.of()) - rest;
        for (double mm : moves(branches, true)) {
            best = Math.min(best, ahead.cost(mm, Set.of(), best));
        }
        for (Part part : mayService) {
            best = Math.min(best, ahead.cost(0, Set.of(part), best));
        }
        return best;
    }

    private List<Double> moves(Prospects branches, boolean coarse) {
        List<Double> all = new ArrayList<>();
        if (!coarse) {
            for (double mm = lowestMm; mm <= highestMm; mm++) {
                if (mm != 0) {
                    all.add(mm);
                }
            }
            return all;
        }
        double aimed = aimedMm(branches);
        for (double share : SHARES) {
            double mm = Math.max(lowestMm, Math.min(highestMm, share * aimed));
            if (Math.abs(mm) >= 0.5) {
                all.add(mm);
            }
        }
        return all;
    }

    private static final double[] SHARES = {0.5, 0.8, 1.1};
}
