package io.github.weirwise.table;

import io.github.weirwise.report.Phrase;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Objects;

/**
 * Understands the moments of a table. A day alone means noon. An hour that the clocks pass twice in autumn is the earlier one;
 * an hour that they leap over in spring never was, and is told.
 *
 * @param zone time zone of moments without an offset
 * @param order order of day and month where the year stands last
 */
record TableMoment(ZoneId zone, DateOrder order) {
    private static final int FIRST_YEAR = 1970;
    private static final int LAST_YEAR = 2200;

    /** Rejects nulls. */
    TableMoment {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(order, "order");
    }

    /**
     * The moment that a cell names, from 1970 to 2200.
     *
     * @param shown the cell's text, short enough for a message
     */
    Instant read(String words, String shown) throws Unfit {
        WrittenMoment written = WrittenMoment.of(words).orElseThrow(() -> noTime(shown));
        if (written.isOpen() && order == DateOrder.UNSTATED) {
            throw new Unfit(Phrase.of("table.dateOrder", shown));
        }
        try {
            return read(written, shown);
        } catch (DateTimeException e) {
            throw noTime(shown);
        }
    }

    private Instant read(WrittenMoment written, String shown) throws Unfit {
        LocalDateTime local = written.day(order).atTime(written.clock().orElse(LocalTime.NOON));
        if (local.getYear() < FIRST_YEAR || local.getYear() > LAST_YEAR) {
            throw noTime(shown);
        }
        if (written.offset().isPresent()) {
            return local.toInstant(written.offset().get());
        }
        ZoneOffset offset = zone.getRules().getValidOffsets(local).stream()
                .findFirst()
                .orElseThrow(() -> new Unfit(Phrase.of("table.gap", shown, zone.getId())));
        return local.toInstant(offset);
    }

    private static Unfit noTime(String shown) {
        return new Unfit(Phrase.of("table.badTime", shown));
    }
}
