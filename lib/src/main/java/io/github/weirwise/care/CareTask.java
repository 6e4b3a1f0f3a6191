package io.github.weirwise.care;

import static io.github.weirwise.care.CareCaution.*;

import io.github.weirwise.report.Band;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.Part;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is looked after, how often (days), and what it does. Intervals are common practice; the limits within which a
 * journal may move them, and the hours without foam, are common practice from memory.
 *
 * @since 0.1
 */
public enum CareTask {
    /** A daily look at foam, levels, container and animals. */
    LOOK(1, 1, 1, null, 0, 0, RUNAWAY, LESS_AIR),
    /** Cup and container emptied. */
    EMPTY_CUP(3, 0.5, 14, null, 0, 1, RUNAWAY),
    /** Cup and neck washed with hot water. */
    WASH_NECK_AND_CUP(7, 2, 14, Part.NECK_AND_CUP, 4, 24, UNPLUG, NO_DETERGENT, LESS_AIR),
    /** Cup's vent and drain hose rinsed through. */
    CLEAR_CUP_VENT(14, 7, 30, Part.CUP_VENT, 0, 1, RUNAWAY),
    /** Filter pad rinsed. */
    RINSE_PAD(7, 3, 10, Part.FILTER_PAD, 0, 0, UNPLUG, MEDIA_ALONE),
    /** Filter pad replaced. */
    REPLACE_PAD(30, 21, 35, null, 0, 0, UNPLUG, MEDIA_ALONE),
    /** Air line rinsed with warm fresh water. */
    CLEAR_AIR_LINE(14, 7, 30, Part.AIR_LINE, 0, 2, UNPLUG, AIR_LINE, LESS_AIR),
    /** Injector nozzle descaled. */
    DESCALE_NOZZLE(60, 30, 90, Part.INJECTOR_NOZZLE, 1, 6, UNPLUG, ACID, LESS_AIR),
    /** Injector pump cleaned. */
    CLEAN_INJECTOR_PUMP(30, 21, 45, Part.INJECTOR_PUMP, 1, 6, UNPLUG, AIR_LINE, LESS_AIR),
    /** Return pump, its strainer and the siphon-break hole cleaned. */
    CLEAN_RETURN_PUMP(30, 21, 45, Part.RETURN_PUMP, 0, 2, UNPLUG, SIPHON_BREAK, LESS_AIR),
    /** Impeller assemblies replaced. */
    RENEW_IMPELLERS(365, 300, 400, null, 1, 6, UNPLUG, LESS_AIR),
    /** Media cleaned, a part at a time. */
    CLEAN_MEDIA(90, 60, 90, null, 0, 12, UNPLUG, MEDIA_IN_PARTS, MEDIA_ALONE),
    /** Siphon-break hole looked at. */
    CHECK_SIPHON_BREAK(14, 7, 14, null, 0, 0, SIPHON_BREAK),
    /** Test button of the protective switch pressed. */
    TEST_SWITCH(30, 30, 30, null, 0, 1, PROTECTIVE_SWITCH, OTHERS_FIRST),
    /** A power cut rehearsed, once and after every change of plumbing; a year at the latest. */
    REHEARSE_POWER_CUT(365, 365, 365, null, 0, 2, REHEARSE, SIPHON_BREAK);

    private final double usualDays;
    private final Range limitDays;
    private final Part part;
    private final Range foamAwayHours;
    private final List<CareCaution> cautions;

    CareTask(
            double usualDays,
            double leastDays,
            double mostDays,
            Part part,
            double leastAwayHours,
            double mostAwayHours,
            CareCaution... cautions) {
        this.usualDays = usualDays;
        this.limitDays = new Range(leastDays, mostDays);
        this.part = part;
        this.foamAwayHours = new Range(leastAwayHours, mostAwayHours);
        this.cautions = List.of(cautions);
    }

    /** Usual interval, days. */
    public double usualDays() {
        return usualDays;
    }

    /** Limits within which a journal may move the interval, days. */
    public Range limitDays() {
        return limitDays;
    }

    /** The part that the journal knows it by, if there is one. */
    public Optional<Part> part() {
        return Optional.ofNullable(part);
    }

    /** Whether it is due at the very start, as long as nobody noted that it was done. */
    public boolean dueAtStart() {
        return this == REHEARSE_POWER_CUT || this == TEST_SWITCH;
    }

    /** How long the foam is away afterwards, h; judge nothing and move nothing meanwhile. */
    public Range foamAwayHours() {
        return foamAwayHours;
    }

    /** What is to be done. */
    public Phrase what() {
        return Phrase.of("care.what." + name());
    }

    /** Why. */
    public Phrase why() {
        return Phrase.of("care.why." + name());
    }

    /** What it does to the unit's working. */
    public Phrase effect() {
        return Phrase.of("care.effect." + name());
    }

    /** How long to wait for foam. */
    public Phrase foamAway() {
        return foamAwayHours.high() == 0
                ? Phrase.of("care.foamStays")
                : Phrase.of("care.foamAway", Band.of(foamAwayHours, Unit.HOUR));
    }

    /** How often, as usual. */
    public Phrase usually() {
        return Phrase.of("care.usually", Quantity.of(usualDays, Unit.DAY));
    }

    /** What to mind, gravest first. */
    public List<Warning> cautions() {
        return Warning.ranked(cautions.stream().map(CareCaution::warning).toList());
    }

    /** Smaller tasks that are done along with this one. */
    public List<CareTask> includes() {
        return switch (this) {
            case WASH_NECK_AND_CUP -> List.of(EMPTY_CUP);
            case REPLACE_PAD -> List.of(RINSE_PAD);
            case RENEW_IMPELLERS -> List.of(CLEAN_INJECTOR_PUMP, CLEAN_RETURN_PUMP, CHECK_SIPHON_BREAK);
            case CLEAN_RETURN_PUMP, REHEARSE_POWER_CUT -> List.of(CHECK_SIPHON_BREAK);
            default -> List.of();
        };
    }

    /** The tasks that a service of a part counts for. */
    static List<CareTask> of(Part part) {
        return Stream.of(values()).filter(task -> task.part == part).toList();
    }
}
