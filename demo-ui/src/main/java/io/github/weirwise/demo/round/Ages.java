package io.github.weirwise.demo.round;

import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.time.Duration;
import java.time.Instant;

/** How long ago something was. */
public final class Ages {
    private static final long HOUR = 60;
    private static final long TWO_DAYS = 48 * HOUR;

    private Ages() {}

    /** In minutes, hours or days. */
    public static Phrase since(Instant at, Instant now) {
        long minutes = Math.max(0, Duration.between(at, now).toMinutes());
        if (minutes < 2) {
            return Words.phrase("age.now");
        }
        Quantity age = minutes < HOUR
                ? Quantity.of(minutes, Unit.MINUTE)
                : minutes < TWO_DAYS
                        ? Quantity.of(Math.rint(minutes / (double) HOUR), Unit.HOUR)
                        : Quantity.of(Math.rint(minutes / (24.0 * HOUR)), Unit.DAY);
        return Words.phrase("age", age);
    }
}
