package io.github.weirwise.diagnosis;

import io.github.weirwise.unit.Part;
import java.util.Optional;

/**
 * What may be the matter, by the name that a technician gives it; what a part at fault does stands in its row
 * ({@link Part}).
 *
 * @since 0.1
 */
public enum Cause {
    /** No part at fault; the weir stands too low for this unit and load. */
    WEIR_TOO_LOW,
    /** No part at fault; the weir stands too high. */
    WEIR_TOO_HIGH(true),
    /** No part at fault and on target. */
    NOTHING_WRONG,
    /** Salt creep or a kink narrows the air line, or its end hangs in the water. */
    AIR_LINE_RESTRICTED(Part.AIR_LINE),
    /** The injector pump is worn or its strainer fouled. */
    INJECTOR_PUMP_WORN(Part.INJECTOR_PUMP),
    /** Scale in the nozzle: less air in larger bubbles. */
    NOZZLE_SCALED(Part.INJECTOR_NOZZLE),
    /** Film of fat and dirt in the neck breaks the foam. */
    NECK_DIRTY(Part.NECK_AND_CUP),
    /** Return pump or its strainer gives less flow. */
    RETURN_FLOW_DOWN(Part.RETURN_PUMP),
    /** The filter pad is clogged and backs water up over the weir. */
    PAD_CLOGGED(Part.FILTER_PAD),
    /** Pressure in the cup from a blocked vent or a drain hose under water. */
    CUP_VENT_BLOCKED(Part.CUP_VENT),
    /** Column, funnel or cup sits wrong: gas escapes beside the funnel. */
    PART_SEATED_WRONG(Part.SEATING),
    /** The weir stands lower than its mark says. */
    WEIR_SLIPPED_DOWN(Part.WEIR_PLATE),
    /** Fine bubbles leave with the water, so less gas reaches the foam. */
    BUBBLES_CARRIED_UNDER(Part.RETURN_WATER),
    /** The water is less salty than it should be. */
    SALINITY_LOW(Part.SALT_MIX),
    /** Oil, fat or food breaks the foam; it passes. */
    FILM_BREAKER,
    /** A conditioner, a medicine, fresh sealant or decay makes wild foam; it passes. */
    FOAMING_AGENT(true),
    /** A new unit: clean surfaces and residues make the foam fickle. */
    BREAK_IN(true),
    /** This water foams less than usual here. */
    LOW_LOAD,
    /** This water foams more than usual here. */
    HIGH_LOAD(true);

    private final Part part;
    private final boolean wetter;

    Cause() {
        this(false);
    }

    Cause(boolean wetter) {
        this.part = null;
        this.wetter = wetter;
    }

    Cause(Part part) {
        this.part = part;
        this.wetter = part.worst().levelMm() > 0;
    }

    /** Whether it makes foam wetter instead of drier. */
    public boolean wetter() {
        return wetter;
    }

    /** The part whose service puts it right, if there is one. */
    public Optional<Part> part() {
        return Optional.ofNullable(part);
    }

    /** The cause by which a part is at fault. */
    public static Optional<Cause> of(Part part) {
        for (Cause cause : values()) {
            if (cause.part == part) {
                return Optional.of(cause);
            }
        }
        return Optional.empty();
    }

    /** Text key of its name. */
    public String nameKey() {
        return "diagnosis.cause." + name();
    }
}
