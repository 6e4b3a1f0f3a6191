package io.github.weirwise.tank;

import java.util.Locale;

/**
 * A tank went where its equations do not hold or cannot be followed: dried out, poisoned or flooded beyond what numbers say.
 * What led there are legal values together, so no single one can be blamed; the hour says where to look.
 */
public final class TankLimitException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final double atHours;

    TankLimitException(double atHours, String problem, Throwable cause) {
        super(
                String.format(
                        Locale.ROOT,
                        "the tank cannot be followed past hour %.2f of its clock: %s; make what happens shortly before"
                                + " that hour milder",
                        atHours,
                        problem),
                cause);
        this.atHours = atHours;
    }

    /** Hour of the tank's clock up to which it could be followed. */
    public double atHours() {
        return atHours;
    }
}
