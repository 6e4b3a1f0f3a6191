package io.github.weirwise.advice;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.WrongValueException;
import io.github.weirwise.unit.Part;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The one thing to do next.
 *
 * @since 0.1
 */
public sealed interface Step {

    /**
     * Set the weir, pump off and unplugged while hands are in.
     *
     * @param byMm how far, up is positive, not 0, -50 to 50 mm
     * @param toCrestMm where its mark stands afterwards, over the chamber floor
     * @param probe a move of at most 2 mm made to learn how the unit answers
     */
    record MoveWeir(double byMm, double toCrestMm, boolean probe) implements Step {
        private static final Limit BY_MM = Limit.of("byMm", -50, 50, Unit.MILLIMETRE, "advice.try.aStepIsSmall");

        /** Checks the range. */
        public MoveWeir {
            BY_MM.check(byMm);
            if (byMm == 0) {
                throw new WrongValueException("byMm", Phrase.of("report.noMove"), Phrase.of("advice.try.holdInstead"));
            }
        }
    }

    /**
     * Leave everything as it is.
     *
     * @param until when to look again
     * @param reason why waiting is the right thing
     */
    record Hold(Instant until, HoldReason reason) implements Step {
        /** Rejects nulls. */
        public Hold {
            Objects.requireNonNull(until, "until");
            Objects.requireNonNull(reason, "reason");
        }
    }

    /**
     * Take one more named reading before anything is touched.
     *
     * @param what the reading
     */
    record Look(LookKind what) implements Step {
        /** Rejects null. */
        public Look {
            Objects.requireNonNull(what, "what");
        }
    }

    /**
     * Clean, free or put right a part, and on the same visit others that were seen bad, are due or are likely fouled.
     *
     * @param part which
     * @param also others, in the order of their table; usually none
     */
    record ServicePart(Part part, List<Part> also) implements Step {
        /** Copies the list; rejects null. */
        public ServicePart {
            Objects.requireNonNull(part, "part");
            also = List.copyOf(also);
        }

        /** One part alone. */
        public ServicePart(Part part) {
            this(part, List.of());
        }

        /** All parts of the visit, the first one first. */
        public List<Part> parts() {
            List<Part> all = new ArrayList<>(also);
            all.add(0, part);
            return all;
        }
    }

    /**
     * Keep water off the floor and animals safe before looking for the cause. It says all that is to be set: the weir, and the
     * air.
     *
     * @param how what to do
     * @param byMm how far the weir goes, 0 or down, 0 to -2000 mm
     * @param toCrestMm where its mark stands afterwards, over the chamber floor
     * @param airLitresPerHour air afterwards, 0 to 20000 L/h; 0 while it is stopped
     */
    record MakeSafe(SafeWay how, double byMm, double toCrestMm, double airLitresPerHour) implements Step {
        private static final Limit BY_MM = Limit.of("byMm", -2000, 0, Unit.MILLIMETRE, "advice.try.whatIsMadeSafe");
        private static final Limit TO_CREST_MM =
                Limit.of("toCrestMm", 1, 2000, Unit.MILLIMETRE, "advice.try.giveTheCrestsHeight");
        private static final Limit AIR_LITRES_PER_HOUR =
                Limit.of("airLitresPerHour", 0, 20000, Unit.LITRE_PER_HOUR, "advice.try.0WhileTheAir");

        /** Rejects null; checks the ranges. */
        public MakeSafe {
            Objects.requireNonNull(how, "how");
            BY_MM.check(byMm);
            TO_CREST_MM.check(toCrestMm);
            AIR_LITRES_PER_HOUR.check(airLitresPerHour);
        }
    }
}
