package io.github.weirwise.practice;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.WrongValueException;
import io.github.weirwise.unit.Part;
import java.util.Arrays;
import java.util.Objects;

/**
 * Something a trainee does to the installation.
 */
public sealed interface Act {
    /** Kinds of act, for what a scenario offers and what each costs. */
    enum Kind {
        /** Set the weir. */
        MOVE_WEIR(MoveWeir.class, 5),
        /** Clean, free or put right a part; the part's row and the scenario's table have the minutes. */
        SERVICE(ServicePart.class, 15),
        /** Stop the injector pump. */
        STOP_AIR(StopAir.class, 1),
        /** Start it again. */
        START_AIR(StartAir.class, 1),
        /** Set the return flow. */
        SET_FLOW(SetFlow.class, 5),
        /** Set the air. */
        SET_AIR(SetAir.class, 5),
        /** Take left food or a dead animal out. */
        TAKE_OUT_FOOD(TakeOutFood.class, 10);

        private final Class<? extends Act> acts;
        private final int minutes;

        Kind(Class<? extends Act> acts, int minutes) {
            this.acts = acts;
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
    default Kind kind() {
        return Arrays.stream(Kind.values())
                .filter(each -> each.acts.isInstance(this))
                .findFirst()
                .orElseThrow();
    }

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
        public Phrase words() {
            return Phrase.of("practice.act.service", Phrase.of("diagnosis.part." + part));
        }
    }

    /** Stop the injector pump: no air, no foam. */
    record StopAir() implements Act {}

    /** Start the injector pump. */
    record StartAir() implements Act {}

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
        public Phrase words() {
            return Phrase.of("practice.act.air", Quantity.of(litresPerHour, Unit.LITRE_PER_HOUR));
        }
    }

    /** Take out left food or a dead animal. */
    record TakeOutFood() implements Act {}
}
