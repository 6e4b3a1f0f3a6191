package io.github.weirwise.trial;

import io.github.weirwise.reading.JournalEntry;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Predicate;

/** Draws a hidden tank from a seed: a unit, one cause or two, where the weir stands, and what the keeper wrote down. */
final class TankDraw {
    private static final double PAIRS_SHARE = 0.08;
    private static final double HISTORY_SHARE = 0.45;

    private final long seed;
    private final Hardship hardship;
    private final SplittableRandom random;

    TankDraw(long seed, Hardship hardship) {
        this.seed = seed;
        this.hardship = hardship;
        random = Dice.of(seed, "plan", 0);
    }

    TankPlan draw() {
        TrueUnit unit = new TrueUnitDraw(Dice.of(seed, "unit", 0), hardship).draw();
        Pace pace = Pace.draw(Dice.of(seed, "pace", 0), hardship);
        List<HiddenCause> kinds = causes();
        int history = random.nextDouble() < HISTORY_SHARE ? 2 + random.nextInt(5) : 0;
        if (kinds.contains(HiddenCause.NEW_UNIT)) {
            history = 0;
        }
        double start = startCrest(unit, pace, kinds);
        List<Ailment> ailments = new ArrayList<>();
        for (HiddenCause kind : kinds) {
            if (kind.course() != HiddenCause.Course.SETTING) {
                ailments.add(new AilmentDraw(random, kind, history, start + unit.crestOffsetMm()).draw());
            }
        }
        List<JournalEntry> known = new KnownDraw(random, history).draw(ailments);
        return new TankPlan(
                seed,
                label(kinds),
                unit,
                List.copyOf(ailments),
                start,
                history,
                known,
                kinds.contains(HiddenCause.MISREAD),
                pace,
                hardship);
    }

    private List<HiddenCause> causes() {
        if (random.nextDouble() < hardship.unnamed()) {
            return List.of(HiddenCause.UNNAMED);
        }
        if (random.nextDouble() >= PAIRS_SHARE) {
            return List.of(pick(each -> each != HiddenCause.UNNAMED));
        }
        HiddenCause fault = pick(HiddenCause::serviceable);
        double which = random.nextDouble();
        if (which < 0.4) {
            return List.of(
                    fault, pick(each -> each.serviceable() && !each.part().equals(fault.part())));
        }
        if (which < 0.65) {
            return List.of(fault, pick(each -> each.course() == HiddenCause.Course.PASSING));
        }
        if (which < 0.8) {
            return List.of(fault, pick(each -> each == HiddenCause.LITTLE || each == HiddenCause.MUCH));
        }
        return List.of(fault, pick(each -> each == HiddenCause.TOO_LOW || each == HiddenCause.TOO_HIGH));
    }

    private HiddenCause pick(Predicate<HiddenCause> allowed) {
        List<HiddenCause> kinds =
                Arrays.stream(HiddenCause.values()).filter(allowed).toList();
        double sum = kinds.stream().mapToDouble(this::weight).sum();
        double at = random.nextDouble() * sum;
        for (HiddenCause kind : kinds) {
            at -= weight(kind);
            if (at < 0) {
                return kind;
            }
        }
        return kinds.get(kinds.size() - 1);
    }

    private double weight(HiddenCause kind) {
        return hardship.evenMix() && kind.weight() > 0 ? 1 : kind.weight();
    }

    /** Where the weir stands: set for the healthy unit by somebody, well or badly. */
    private double startCrest(TrueUnit unit, Pace pace, List<HiddenCause> kinds) {
        TankPlan bare = new TankPlan(seed, "", unit, List.of(), 0, 0, List.of(), false, pace, hardship);
        Truth healthy = Truth.healthy(bare);
        double mark;
        if (kinds.contains(HiddenCause.TOO_LOW)) {
            mark = healthy.markFor(0, -Dice.between(random, 1.15, 3.2), each -> true);
        } else if (kinds.contains(HiddenCause.TOO_HIGH)) {
            mark = healthy.markFor(0, Dice.between(random, 1.1, 2.6), each -> true);
        } else {
            boolean badly = kinds.get(0).serviceable() && random.nextDouble() < 0.25;
            double log = badly ? Dice.normalWithin(random, 0, 0.9, 2) : Dice.normalWithin(random, 0, 0.25, 2);
            mark = healthy.markFor(0, log, each -> true);
        }
        return unit.sheet().weir().clampMm(Math.round(mark * 2) / 2.0);
    }

    private static String label(List<HiddenCause> kinds) {
        if (kinds.size() == 1) {
            return kinds.get(0).cause().name();
        }
        HiddenCause other = kinds.get(1);
        return switch (other.course()) {
            case SETTING -> "pair: fault and weir off";
            case PASSING -> "pair: fault and passing";
            case LASTING -> "pair: fault and load";
            case GROWING, SUDDEN -> "pair: two faults";
        };
    }
}
