package io.github.weirwise.trial;

import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.unit.Part;
import java.util.Optional;

/**
 * Causes as the truth knows them: how often they come, what a size from 0 to 1 does, and how they go on. Weights and
 * formulas are the trial's own.
 */
enum HiddenCause {
    NOTHING(Cause.NOTHING_WRONG, 10, Course.SETTING),
    TOO_LOW(Cause.WEIR_TOO_LOW, 9, Course.SETTING),
    TOO_HIGH(Cause.WEIR_TOO_HIGH, 9, Course.SETTING),
    MISREAD(Cause.READING_ERROR, 3, Course.SETTING),

    AIR_LINE_NARROW(Cause.AIR_LINE_RESTRICTED, 8, Course.GROWING, Part.AIR_LINE) {
        @Override
        void act(double size, double variant, Strain on) {
            on.air *= 0.92 - 0.6 * size;
        }
    },
    AIR_LINE_WET(Cause.AIR_LINE_UNDER_WATER, 2.5, Course.SUDDEN, Part.AIR_LINE) {
        @Override
        void act(double size, double variant, Strain on) {
            on.air *= 0.16 * (1 - size);
        }
    },
    PUMP_WORN(Cause.INJECTOR_PUMP_WORN, 5, Course.GROWING, Part.INJECTOR_PUMP) {
        @Override
        void act(double size, double variant, Strain on) {
            on.air *= 0.94 - 0.45 * size;
        }
    },
    NOZZLE(Cause.NOZZLE_SCALED, 3.5, Course.GROWING, Part.INJECTOR_NOZZLE) {
        @Override
        void act(double size, double variant, Strain on) {
            on.air *= 0.95 - 0.35 * size;
            on.rise *= 1 + 0.5 * size;
            on.life *= 1 - 0.08 * size;
            on.strength *= 1 / (1 + 0.3 * size);
        }
    },
    NECK(Cause.NECK_DIRTY, 7, Course.GROWING, Part.NECK_AND_CUP) {
        @Override
        void act(double size, double variant, Strain on) {
            on.life *= 0.95 - 0.22 * Math.pow(size, 0.9);
        }
    },
    FLOW_DOWN(Cause.RETURN_FLOW_DOWN, 6, Course.GROWING, Part.RETURN_PUMP) {
        @Override
        void act(double size, double variant, Strain on) {
            on.flow *= 0.9 - 0.5 * size;
        }
    },
    PAD(Cause.PAD_CLOGGED, 5, Course.GROWING, Part.FILTER_PAD) {
        @Override
        void act(double size, double variant, Strain on) {
            on.beyondMm = variant + 8 + 24 * size;
        }
    },
    VENT(Cause.CUP_VENT_BLOCKED, 4, Course.SUDDEN, Part.CUP_VENT) {
        @Override
        void act(double size, double variant, Strain on) {
            on.backPressureMm += 2.5 + 12 * size;
        }
    },
    SEAT(Cause.PART_SEATED_WRONG, 3, Course.SUDDEN, Part.SEATING) {
        @Override
        void act(double size, double variant, Strain on) {
            on.kept *= 0.94 - 0.32 * size;
            on.life *= 1 - 0.06 * size;
        }
    },
    SLIP(Cause.WEIR_SLIPPED_DOWN, 4, Course.SUDDEN, Part.WEIR_PLATE) {
        @Override
        void act(double size, double variant, Strain on) {
            on.slipMm -= 2.5 + 10 * size;
        }
    },
    CARRIED(Cause.BUBBLES_CARRIED_UNDER, 2, Course.SUDDEN, Part.RETURN_WATER) {
        @Override
        void act(double size, double variant, Strain on) {
            on.kept *= 0.95 - 0.28 * size;
            on.rise *= 1 - 0.2 * size;
        }
    },
    SALT(Cause.SALINITY_LOW, 3, Course.GROWING, Part.SALT_MIX) {
        @Override
        void act(double size, double variant, Strain on) {
            on.salinityShift -= 4 + 13 * size;
            on.life *= 0.95 - 0.16 * size;
            on.rise *= 1 + 0.12 * size;
        }
    },

    FILM(Cause.FILM_BREAKER, 5, Course.PASSING) {
        @Override
        void act(double size, double variant, Strain on) {
            on.life *= 1 - 0.45 * size;
        }
    },
    AGENT(Cause.FOAMING_AGENT, 4, Course.PASSING) {
        @Override
        void act(double size, double variant, Strain on) {
            on.life *= 1 + 0.8 * size;
            on.strength *= 1 - 0.6 * Math.min(1, 1.2 * size);
        }
    },
    MEDICINE(Cause.MEDICATION, 2.5, Course.PASSING) {
        @Override
        void act(double size, double variant, Strain on) {
            on.life *= variant < 0.75 ? 1 + 0.5 * size : 1 - 0.3 * size;
            on.strength *= 1 - 0.35 * size;
        }
    },
    NEW_UNIT(Cause.BREAK_IN, 3, Course.PASSING) {
        @Override
        void act(double size, double variant, Strain on) {
            on.life *= 1 - size * (0.12 + 0.3 * variant);
            on.strength *= 1 - 0.35 * size;
        }
    },
    CHANGED(Cause.JUST_CHANGED, 4, Course.PASSING) {
        @Override
        void act(double size, double variant, Strain on) {
            on.life *= 1 - 0.5 * size;
        }
    },

    LITTLE(Cause.LOW_LOAD, 4, Course.LASTING) {
        @Override
        void act(double size, double variant, Strain on) {
            on.life *= 0.97 - 0.13 * size;
            on.strength *= 0.6 - 0.42 * size;
        }
    },
    MUCH(Cause.HIGH_LOAD, 4, Course.LASTING) {
        @Override
        void act(double size, double variant, Strain on) {
            on.life *= 1.04 + 0.14 * size;
            on.strength *= 1.2 + 0.7 * size;
        }
    },
    /** A cause that nobody has named; it comes only in the shift test. */
    UNNAMED(Cause.SOMETHING_ELSE, 0, Course.LASTING) {
        @Override
        void act(double size, double variant, Strain on) {
            on.slipMm += 20 * (variant - 0.5) * size;
            on.life *= 1 + (variant > 0.5 ? -0.2 : 0.2) * size;
        }
    };

    /** How a cause goes on. */
    enum Course {
        /** No cause, only where the weir stands or what was read. */
        SETTING,
        /** Grows over days until serviced. */
        GROWING,
        /** There at once, until serviced. */
        SUDDEN,
        /** Fades by itself. */
        PASSING,
        /** Stays. */
        LASTING
    }

    private final Cause cause;
    private final double weight;
    private final Course course;
    private final Part part;

    HiddenCause(Cause cause, double weight, Course course) {
        this(cause, weight, course, null);
    }

    HiddenCause(Cause cause, double weight, Course course, Part part) {
        this.cause = cause;
        this.weight = weight;
        this.course = course;
        this.part = part;
    }

    /** Applies a size to the unit; {@code variant} is whatever the cause needs besides. */
    void act(double size, double variant, Strain on) {}

    Cause cause() {
        return cause;
    }

    double weight() {
        return weight;
    }

    Course course() {
        return course;
    }

    Optional<Part> part() {
        return Optional.ofNullable(part);
    }

    boolean serviceable() {
        return part != null;
    }
}
