package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.unit.Part;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * The causes that the diagnosis weighs, as one table: prior weight, what the cause does to the model, what puts it right,
 * which part shows it to a person who looks, what in the journal makes it likelier, and whether it grows.
 *
 * <p>Prior weights and sizes are our own estimates from common practice; they are relative and need not add up. A new
 * cause is one new row here and its words in {@code texts.properties}.
 *
 * @since 0.1
 */
public enum Cause {
    /** No fault; the weir stands too low for this unit and load. Told apart from the next two after the fact. */
    WEIR_TOO_LOW(0, size -> Influence.NONE, Remedy.of(Remedy.Kind.SET_WEIR)),
    /** No fault; the weir stands too high. */
    WEIR_TOO_HIGH(0, size -> Influence.NONE, Remedy.of(Remedy.Kind.SET_WEIR)),
    /** No fault and on target. As a prior it stands for all three. */
    NOTHING_WRONG(40, size -> Influence.NONE, Remedy.of(Remedy.Kind.NONE)),

    /** Salt creep or a kink narrows the air line. */
    AIR_LINE_RESTRICTED(
            10, size -> Influence.onAir(0.95 - 0.65 * size), Remedy.service(Part.AIR_LINE, 12), Growth.DAYS),
    /** The open end of the air line hangs in the water. */
    AIR_LINE_UNDER_WATER(2, size -> Influence.onAir(0.12 * (1 - size)), Remedy.service(Part.AIR_LINE, 12)),
    /** The injector pump is worn or its strainer fouled. */
    INJECTOR_PUMP_WORN(
            5, size -> Influence.onAir(0.95 - 0.5 * size), Remedy.service(Part.INJECTOR_PUMP, 12), Growth.DAYS),
    /** Scale in the nozzle: less air in larger bubbles. */
    NOZZLE_SCALED(
            3,
            size -> new Influence(0.95 - 0.4 * size, 1, 1 - 0.1 * size, 1 + 0.4 * size, 0, 0, 0, 1, 0, 1),
            Remedy.service(Part.INJECTOR_NOZZLE, 12),
            Growth.DAYS),
    /** Film of fat and dirt in the neck breaks the foam. */
    NECK_DIRTY(
            8, size -> Influence.onFoam(1 - 0.04 - 0.26 * size, 1), Remedy.service(Part.NECK_AND_CUP, 18), Growth.DAYS),
    /** Return pump or its strainer gives less flow. */
    RETURN_FLOW_DOWN(7, size -> Influence.onFlow(0.95 - 0.5 * size), Remedy.service(Part.RETURN_PUMP, 12), Growth.DAYS),
    /** The filter pad is clogged, water stands beyond the weir and drowns it. */
    PAD_CLOGGED(
            6,
            size -> new Influence(1, 1, 1, 1, 0, 0, 1 + 24 * size, 1, 0, 1),
            Remedy.service(Part.FILTER_PAD, 12),
            Growth.DAYS),
    /** Pressure in the cup from a blocked vent or a drain hose under water. */
    CUP_VENT_BLOCKED(
            4, size -> new Influence(1, 1, 1, 1, 0, 1.5 + 12 * size, 0, 1, 0, 1), Remedy.service(Part.CUP_VENT, 12)),
    /** Column, funnel or cup sits wrong: gas escapes beside the funnel. */
    PART_SEATED_WRONG(
            3,
            size -> new Influence(1, 1, 1 - 0.1 * size, 1, 0, 0, 0, 1, 0, 0.92 - 0.35 * size),
            Remedy.service(Part.SEATING, 12)),
    /** The weir stands lower than its mark says. */
    WEIR_SLIPPED_DOWN(
            4, size -> new Influence(1, 1, 1, 1, -(2 + 10 * size), 0, 0, 1, 0, 1), Remedy.service(Part.WEIR_PLATE, 24)),
    /** Fine bubbles leave with the water, so less gas reaches the foam. */
    BUBBLES_CARRIED_UNDER(
            3.5,
            size -> new Influence(1, 1, 1, 1 - 0.2 * size, 0, 0, 0, 1, 0, 0.95 - 0.3 * size),
            Remedy.service(Part.RETURN_WATER, 24)),
    /** The water is less salty than it should be: larger bubbles, shorter life. */
    SALINITY_LOW(
            3,
            size -> new Influence(1, 1, 1 - 0.04 - 0.18 * size, 1 + 0.15 * size, 0, 0, 0, 1, -(4 + 14 * size), 1),
            Remedy.service(Part.SALT_MIX, 48),
            Growth.DAYS,
            Happening.Kind.TOP_OFF),

    /** Oil, fat or food breaks the films; it passes. */
    FILM_BREAKER(
            6,
            size -> Influence.onFoam(1 - 0.08 - 0.5 * size, 1),
            Remedy.waiting(24),
            Growth.NONE,
            Happening.Kind.FED_HEAVILY,
            Happening.Kind.HANDS_IN_TANK),
    /** A conditioner or fresh sealant makes wild, pale foam; it passes. */
    FOAMING_AGENT(
            4,
            size -> Influence.onFoam(1.1 + 0.9 * size, 0.5 - 0.3 * size),
            Remedy.waiting(96),
            Growth.NONE,
            Happening.Kind.CONDITIONER,
            Happening.Kind.SEALANT),
    /** A medicine changes the foam either way, mostly wilder; it passes. */
    MEDICATION(
            2,
            size -> Influence.onFoam(0.85 + 0.65 * size, 0.75 - 0.3 * size),
            Remedy.waiting(120),
            Growth.NONE,
            Happening.Kind.MEDICATION),
    /** A new unit: clean surfaces and residues make the foam fickle. */
    BREAK_IN(
            3,
            size -> Influence.onFoam(0.6 + 0.45 * size, 0.75),
            Remedy.waiting(144),
            Growth.NONE,
            Happening.Kind.FIRST_START),
    /** Foam has not come back after washing or a change. */
    JUST_CHANGED(3, size -> Influence.onFoam(1 - 0.5 * size, 1), Remedy.waiting(14)),

    /** Little to skim. */
    LOW_LOAD(5, size -> Influence.onFoam(0.97 - 0.17 * size, 0.65 - 0.5 * size), Remedy.of(Remedy.Kind.NONE)),
    /** Much to skim. */
    HIGH_LOAD(
            5,
            size -> Influence.onFoam(1.03 + 0.2 * size, 1.3 + 1.5 * size),
            Remedy.of(Remedy.Kind.SET_WEIR),
            Growth.NONE,
            Happening.Kind.ANIMAL_DIED),
    /** The last reading is wrong. */
    READING_ERROR(2, size -> Influence.NONE, Remedy.of(Remedy.Kind.READ_AGAIN)),
    /** None of these: anything that changes level and foam. */
    SOMETHING_ELSE(
            1.5,
            size -> new Influence(1, 1, 0.7 + 0.6 * size, 1, 8 * (((size * 7919) % 1) - 0.5), 0, 0, 1, 0, 1),
            Remedy.of(Remedy.Kind.NONE));

    /** How a cause grows. */
    public enum Growth {
        /** It is there at once. */
        NONE,
        /** It grows over days until serviced. */
        DAYS
    }

    private final double priorWeight;
    private final Effect effect;
    private final Remedy remedy;
    private final Growth growth;
    private final Set<Happening.Kind> heralds;

    Cause(double priorWeight, Effect effect, Remedy remedy) {
        this(priorWeight, effect, remedy, Growth.NONE);
    }

    Cause(double priorWeight, Effect effect, Remedy remedy, Growth growth, Happening.Kind... heralds) {
        this.priorWeight = priorWeight;
        this.effect = effect;
        this.remedy = remedy;
        this.growth = growth;
        Set<Happening.Kind> kinds = EnumSet.noneOf(Happening.Kind.class);
        for (Happening.Kind kind : heralds) {
            kinds.add(kind);
        }
        this.heralds = kinds;
    }

    /** Relative weight before anything is read; 0 for the causes told apart after the fact. */
    public double priorWeight() {
        return priorWeight;
    }

    /** What it does to the model. */
    public Effect effect() {
        return effect;
    }

    /** What puts it right. */
    public Remedy remedy() {
        return remedy;
    }

    /** How it grows. */
    public Growth growth() {
        return growth;
    }

    /** Happenings that make it likelier; empty for most. */
    public Set<Happening.Kind> heralds() {
        return Set.copyOf(heralds);
    }

    /** The part whose service puts it right, if there is one. */
    public Optional<Part> servicePart() {
        return remedy.part();
    }

    /** Whether a service of a part puts it right. */
    public boolean serviceable() {
        return remedy.kind() == Remedy.Kind.SERVICE;
    }

    /** Whether it passes by itself. */
    public boolean passes() {
        return remedy.kind() == Remedy.Kind.WAIT;
    }

    /** Whether a look at a part or place shows it, although no service of that part puts it right. */
    boolean shownBy(Part part) {
        return switch (this) {
            case FILM_BREAKER -> part == Part.WATER_SURFACE;
            case FOAMING_AGENT, MEDICATION -> part == Part.ADDITIVES;
            default -> false;
        };
    }

    /** Text key of its name. */
    public String nameKey() {
        return "diagnosis.cause." + name();
    }
}
