package io.github.weirwise.diagnosis;

import io.github.weirwise.unit.Part;
import java.util.Objects;
import java.util.Optional;

/**
 * What puts a cause right, and how long that takes to show.
 *
 * @param kind what sort of thing it is
 * @param part the part to service, for {@link Kind#SERVICE} only
 * @param hours until the effect shows, or until it passes by itself; 0 or more
 * @since 0.1
 */
public record Remedy(Kind kind, Optional<Part> part, double hours) {
    /** What sort of remedy. */
    public enum Kind {
        /** Move the weir. */
        SET_WEIR,
        /** Clean, free or put right a part. */
        SERVICE,
        /** Wait; it passes. */
        WAIT,
        /** Read again. */
        READ_AGAIN,
        /** Nothing to do. */
        NONE
    }

    /** Rejects nulls. */
    public Remedy {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(part, "part");
    }

    static Remedy service(Part part, double hours) {
        return new Remedy(Kind.SERVICE, Optional.of(part), hours);
    }

    static Remedy waiting(double hours) {
        return new Remedy(Kind.WAIT, Optional.empty(), hours);
    }

    static Remedy of(Kind kind) {
        return new Remedy(kind, Optional.empty(), 24);
    }
}
