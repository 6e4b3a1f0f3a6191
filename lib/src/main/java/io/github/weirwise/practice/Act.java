package io.github.weirwise.practice;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.WrongValueException;
import io.github.weirwise.unit.Part;
import java.util.Objects;

/**
 * Something a trainee does to the installation.
 */
public sealed interface Act {
    /** Kinds of act, for what a scenario offers and what each costs. */
    enum Kind {
        /** Set the weir. */
        MOVE_WEIR(5),
        /** Clean, free or put right a part; the part's row and the scenario's table have the minutes. */
        SERVICE(15),
        /** Stop the injector pump. */
        STOP_AIR(1),
        /** Start it again. */
        START_AIR(1),
        /** Set the return flow. */
        SET_FLOW(5),
        /** Set the air. */
        SET_AIR(5),
        /** Take left food or a dead animal out. */
        TAKE_OUT_FOOD(10);

        private final int minutes;

        Kind(int minutes) {
            this.minutes = minutes;
        }

        /** Minutes it takes unless a scenario says otherwise (our own estimates). */
        public int minutes() {
            return minutes;
        }

        /** The kind in words. */
        public Phrase words() {
            return Phrase.of("practice.act." + name());
        }
    }

    /** Its kind. */
    Kind kind();

    /** The act in words. */
    default Phrase words() {
        return kind().words();
    }

    /**
     * Move the weir.
     *
     * @param byMm up is positive, -50 to 50 mm, not 0
     */
    record MoveWeir(double byMm) implements Act {
        private static final Limit BY_MM = Limit.of("byMm", -50, 50, Unit.MILLIMETRE, "practice.try.aStepIsSmall");

        /** Checks the range. */
        public MoveWeir {
            BY_MM.check(byMm);
            if (byMm == 0) {
                throw new WrongValueException(
                        "byMm", Phrase.of("report.noMove"), Phrase.of("practice.try.waitInstead"));
            }
        }

        @Override
        public Kind kind() {
            return Kind.MOVE_WEIR;
        }

        @Override
        public Phrase words() {
            Quantity size = Quantity.of(Math.abs(byMm), Unit.MILLIMETRE);
            return byMm > 0 ? Phrase.of("practice.act.raise", size) : Phrase.of("practice.act.lower", size);
        }
    }

    /**
     * Service a part.
     *
     * @param part which
     */
    record ServicePart(Part part) implements Act {
        /** Rejects null. */
        public ServicePart {
            Objects.requireNonNull(part, "part");
        }

        @Override
        public Kind kind() {
            return Kind.SERVICE;
        }

        @Override
        public Phrase words() {
            return Phrase.of("practice.act.service", Phrase.of("diagnosis.part." + part));
        }
    }

    /** Stop the injector pump: no air, no foam. */
    record StopAir() implements Act {
        @Override
        public Kind kind() {
            return Kind.STOP_AIR;
        }
    }

    /** Start the injector pump. */
    record StartAir() implements Act {
        @Override
        public Kind kind() {
            return Kind.START_AIR;
        }
    }

    /**
     * Set the return flow.
     *
     * @param litresPerHour 0 to 100000 L/h
     */
    record SetFlow(double litresPerHour) implements Act {
        private static final Limit LITRES_PER_HOUR =
                Limit.of("litresPerHour", 0, 1e5, Unit.LITRE_PER_HOUR, "practice.try.giveLitresPerHour");

        /** Checks the range. */
        public SetFlow {
            LITRES_PER_HOUR.check(litresPerHour);
        }

        @Override
        public Kind kind() {
            return Kind.SET_FLOW;
        }

        @Override
        public Phrase words() {
            return Phrase.of("practice.act.flow", Quantity.of(litresPerHour, Unit.LITRE_PER_HOUR));
        }
    }

    /**
     * Set the air.
     *
     * @param litresPerHour clean air draw, 0 to 20000 L/h
     */
    record SetAir(double litresPerHour) implements Act {
        private static final Limit LITRES_PER_HOUR =
                Limit.of("litresPerHour", 0, 20000, Unit.LITRE_PER_HOUR, "practice.try.giveLitresPerHour");

        /** Checks the range. */
        public SetAir {
            LITRES_PER_HOUR.check(litresPerHour);
        }

        @Override
        public Kind kind() {
            return Kind.SET_AIR;
        }

        @Override
        public Phrase words() {
            return Phrase.of("practice.act.air", Quantity.of(litresPerHour, Unit.LITRE_PER_HOUR));
        }
    }

    /** Take out left food or a dead animal. */
    record TakeOutFood() implements Act {
        @Override
        public Kind kind() {
            return Kind.TAKE_OUT_FOOD;
        }
    }
}
