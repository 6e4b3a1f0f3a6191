package io.github.weirwise.lab;

import static io.github.weirwise.lab.Dice.between;
import static io.github.weirwise.unit.Part.*;

import io.github.weirwise.lab.truth.Fouling;
import io.github.weirwise.lab.truth.ResponseLaw;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/** Draws a hidden tank from a seed. */
final class PlanDraw {
    /** What can be wrong at the start of a short play; a null part is the weir set wrong or nothing. */
    enum Kind {
        NOTHING(null, false),
        WEIR_OFF(null, false),
        AIR_LINE_NARROW(AIR_LINE, true),
        INJECTOR_WORN(INJECTOR_PUMP, true),
        NOZZLE_SCALED(INJECTOR_NOZZLE, true),
        NECK_FILM(NECK_AND_CUP, true),
        VENT_BLOCKED(CUP_VENT, false),
        SEATED_WRONG(SEATING, false),
        WEIR_SLIPPED(WEIR_PLATE, false),
        PAD_CLOGGED(FILTER_PAD, true),
        RETURN_FLOW_DOWN(RETURN_PUMP, true),
        SALINITY_LOW(SALT_MIX, false),
        BUBBLES_UNDER(RETURN_WATER, false);

        final Part part;
        final boolean grows;

        Kind(Part part, boolean grows) {
            this.part = part;
            this.grows = grows;
        }
    }

    /** Parts that fail all at once, in the long play. */
    private static final Part[] SUDDEN = {CUP_VENT, SEATING, WEIR_PLATE, SALT_MIX, RETURN_WATER};

    private final long seed;
    private final Truth truth;
    private final SplittableRandom dice;

    PlanDraw(Truth truth, long seed) {
        this.truth = truth;
        this.seed = seed;
        dice = Dice.of(seed, "plan", 0);
    }

    Plan draw() {
        SkimmerUnit sheet = LabUnits.ALL.get(dice.nextInt(LabUnits.ALL.size()));
        ResponseLaw law = truth.draw(sheet, Dice.of(seed, "unit", 0));
        int history = !truth.isLong() && dice.nextDouble() < Habits.HISTORY ? 1 + dice.nextInt(Habits.HISTORY_DAYS) : 0;
        int firstHour = -24 * history;
        List<Kind> kinds = kinds();
        List<Fault> faults = new ArrayList<>();
        for (Kind kind : kinds) {
            if (kind.part != null) {
                faults.add(fault(kind, firstHour));
            }
        }
        int lastHour = 24 * truth.days() + Plan.AFTERWARDS_HOURS;
        if (truth.isLong()) {
            suddenFaults(faults);
        }
        Fouling start = startFouling();
        return new Plan(
                seed,
                truth,
                sheet,
                law,
                new Water(seed, firstHour - Plan.BEFORE_HOURS, lastHour + 1),
                startCrest(sheet, law, start, kinds.contains(Kind.WEIR_OFF)),
                start,
                pace(),
                List.copyOf(faults),
                truth.isLong() ? upkeep() : List.of(),
                truth.isLong() ? "slow fouling" : label(kinds),
                firstHour,
                missed(),
                between(dice, Habits.LAG_HOURS[0], Habits.LAG_HOURS[1]));
    }

    private static String label(List<Kind> kinds) {
        return kinds.size() == 1 ? kinds.get(0).name() : "two at once";
    }

    private List<Kind> kinds() {
        if (truth.isLong()) {
            return List.of(dice.nextInt(4) == 0 ? Kind.WEIR_OFF : Kind.NOTHING);
        }
        Kind[] all = Kind.values();
        Kind first = all[dice.nextInt(all.length)];
        Kind second = all[dice.nextInt(all.length)];
        boolean both = dice.nextDouble() < Habits.SECOND_FAULT && second != first && second != Kind.NOTHING;
        return both && first != Kind.NOTHING ? List.of(first, second) : List.of(first);
    }

    private Fault fault(Kind kind, int firstHour) {
        double size = between(dice, Habits.FAULT_SIZE[0], Habits.FAULT_SIZE[1]);
        double grows = kind.grows ? between(dice, Habits.FAULT_GROWS_HOURS[0], Habits.FAULT_GROWS_HOURS[1]) : 1;
        int from = kind.grows ? Math.max(firstHour, -(int) (dice.nextDouble() * grows)) : firstHour;
        return new Fault(kind.part, from, grows, size);
    }

    private void suddenFaults(List<Fault> faults) {
        for (int day = 3; day < truth.days(); day++) {
            if (dice.nextDouble() < Habits.SUDDEN_A_DAY) {
                Part part = SUDDEN[dice.nextInt(SUDDEN.length)];
                faults.add(new Fault(part, 24 * day, 1, between(dice, Habits.FAULT_SIZE[0], Habits.FAULT_SIZE[1])));
            }
        }
    }

    /** In the long play somebody washes the neck or changes the pad now and then, and may not say so. */
    private List<Upkeep> upkeep() {
        SplittableRandom hands = Dice.of(seed, "upkeep", 0);
        List<Upkeep> upkeep = new ArrayList<>();
        for (int day = 1; day < truth.days(); day++) {
            if (hands.nextDouble() < Habits.UNASKED_UPKEEP_A_DAY) {
                Part part = hands.nextBoolean() ? NECK_AND_CUP : FILTER_PAD;
                upkeep.add(new Upkeep(24 * day + 10, part, hands.nextDouble() < Habits.NOTED));
            }
        }
        return List.copyOf(upkeep);
    }

    /** Where the weir stands: set by somebody, well or badly, for the unit as it was before anything went wrong. */
    private double startCrest(SkimmerUnit sheet, ResponseLaw law, Fouling start, boolean wrong) {
        double log = Dice.near(dice, 0, Habits.SET_LOG);
        if (wrong) {
            double off = between(dice, Habits.SET_WRONG_LOG[0], Habits.SET_WRONG_LOG[1]);
            log = dice.nextBoolean() ? off : -off;
        }
        double low = sheet.weir().lowestCrestMm();
        double high = sheet.weir().highestCrestMm();
        while (high - low > 0.05) {
            double middle = (low + high) / 2;
            if (law.at(middle, 1, start, 0, 0).logAmount() > log) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Math.rint(low);
    }

    private Fouling startFouling() {
        Fouling start = new Fouling();
        double most = truth.isLong() ? Habits.START_FOULED_LONG : Habits.START_FOULED;
        for (Part part : List.of(NECK_AND_CUP, FILTER_PAD, AIR_LINE, INJECTOR_PUMP, RETURN_PUMP, INJECTOR_NOZZLE)) {
            start.set(part, most * dice.nextDouble());
        }
        return start;
    }

    private double[] pace() {
        double[] pace = new double[Part.values().length];
        pace[NECK_AND_CUP.ordinal()] = perHour(Habits.NECK_DAYS);
        pace[FILTER_PAD.ordinal()] = perHour(Habits.PAD_DAYS);
        pace[AIR_LINE.ordinal()] = perHour(Habits.AIR_LINE_DAYS);
        pace[INJECTOR_PUMP.ordinal()] = perHour(Habits.PUMP_DAYS);
        pace[RETURN_PUMP.ordinal()] = perHour(Habits.PUMP_DAYS);
        pace[INJECTOR_NOZZLE.ordinal()] = perHour(Habits.NOZZLE_DAYS);
        return pace;
    }

    private double perHour(double[] days) {
        return 1 / (24 * between(dice, days[0], days[1]));
    }

    private Set<Integer> missed() {
        Set<Integer> missed = new HashSet<>();
        for (int hour = 24 * truth.everyDays(); hour < 24 * truth.days(); hour += 24 * truth.everyDays()) {
            if (dice.nextDouble() < Habits.MISSED_VISIT) {
                missed.add(hour);
            }
        }
        return Set.copyOf(missed);
    }
}
