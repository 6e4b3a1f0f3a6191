package io.github.weirwise.advice;

import io.github.weirwise.report.Require;
import io.github.weirwise.unit.Part;
import java.time.Instant;
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
        /** Checks the range. */
        public MoveWeir {
            Require.inRange("byMm", byMm, -50, 50, "mm", "a step is small");
            if (byMm == 0) {
                throw new IllegalArgumentException("byMm is 0 mm, a move has a size; hold instead");
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
     * Clean, free or put right one part.
     *
     * @param part which
     */
    record ServicePart(Part part) implements Step {
        /** Rejects null. */
        public ServicePart {
            Objects.requireNonNull(part, "part");
        }
    }

    /**
     * Keep water off the floor and animals safe before looking for the cause.
     *
     * @param how what to do
     */
    record MakeSafe(SafeWay how) implements Step {
        /** Rejects null. */
        public MakeSafe {
            Objects.requireNonNull(how, "how");
        }
    }
}
