package io.github.weirwise.table;

import io.github.weirwise.report.Phrase;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;
import java.time.temporal.TemporalQueries;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * Understands the moments of a table: {@code 2026-05-04 08:30}, {@code 31.05.2026}, {@code 4 May 2026}, {@code 5/1/2026 8:30 AM}, with
 * seconds and an offset allowed, or the seconds since 1970 in ten digits. A day alone means noon. An hour that the clocks pass twice
 * in autumn is the earlier one; an hour that they leap over in spring never was, and is told.
 *
 * @param zone time zone of moments without an offset
 * @param order order of day and month where the year stands last
 */
record TableMoment(ZoneId zone, DateOrder order) {
    private static final int FIRST_YEAR = 1970;
    private static final int LAST_YEAR = 2200;
    private static final int LONGEST = 60;
    private static final String DAYS =
            "[EEEE[','] ][EEE[','] ][uuuu-M-d][uuuu/M/d][d.M.uuuu][d.M.uu][d MMM uuuu][d MMMM uuuu]"
                    + "[d-MMM-uuuu][d-MMM-uu][MMM d, uuuu][MMMM d, uuuu]";
    private static final DateTimeFormatter DAY_FIRST = form("[d/M/uuuu][d/M/uu][d-M-uuuu]");
    private static final DateTimeFormatter MONTH_FIRST = form("[M/d/uuuu][M/d/uu][M-d-uuuu]");

    private static DateTimeFormatter form(String openDays) {
        return new DateTimeFormatterBuilder()
                .parseCaseInsensitive()
                .appendPattern(DAYS + openDays + "[','][' ']['T'][h:mm[:ss][' ']a][H:mm[:ss")
                .appendFraction(ChronoField.NANO_OF_SECOND, 0, 9, true)
                .optionalEnd()
                .optionalEnd()
                .appendPattern("[' '][XXX][XX][X]")
                .toFormatter(Locale.ENGLISH)
                .withResolverStyle(ResolverStyle.STRICT);
    }

    /** Rejects nulls. */
    TableMoment {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(order, "order");
    }

    /** What a moment tells about the order of day and month: a day over 12; unstated when both orders give a day, or none does. */
    static DateOrder order(String words) {
        boolean dayFirst = taken(words, DAY_FIRST).isPresent();
        boolean monthFirst = taken(words, MONTH_FIRST).isPresent();
        return dayFirst == monthFirst ? DateOrder.UNSTATED : dayFirst ? DateOrder.DAY_FIRST : DateOrder.MONTH_FIRST;
    }

    /**
     * The moment that a cell names, from 1970 to 2200.
     *
     * @param shown the cell's text, short enough for a message
     */
    Instant read(String words, String shown) throws Unfit {
        if (words.strip().matches("[0-9]{10}")) {
            return Instant.ofEpochSecond(Long.parseLong(words.strip()));
        }
        Optional<TemporalAccessor> dayFirst = taken(words, DAY_FIRST);
        Optional<TemporalAccessor> monthFirst = taken(words, MONTH_FIRST);
        if (order == DateOrder.UNSTATED && dayFirst.isPresent() && monthFirst.isPresent()) {
            if (!day(dayFirst.get()).equals(day(monthFirst.get()))) {
                throw new Unfit(Phrase.of("table.dateOrder", shown));
            }
        }
        Optional<TemporalAccessor> taken = order == DateOrder.MONTH_FIRST ? monthFirst : dayFirst;
        if (taken.isEmpty() && order == DateOrder.UNSTATED) {
            taken = monthFirst;
        }
        return read(taken.orElseThrow(() -> noTime(shown)), shown);
    }

    private Instant read(TemporalAccessor taken, String shown) throws Unfit {
        LocalTime clock = taken.query(TemporalQueries.localTime());
        LocalDateTime local = day(taken).atTime(clock == null ? LocalTime.NOON : clock);
        if (local.getYear() < FIRST_YEAR || local.getYear() > LAST_YEAR) {
            throw noTime(shown);
        }
        ZoneOffset said = taken.query(TemporalQueries.offset());
        if (said != null) {
            return local.toInstant(said);
        }
        ZoneOffset offset = zone.getRules().getValidOffsets(local).stream()
                .findFirst()
                .orElseThrow(() -> new Unfit(Phrase.of("table.gap", shown, zone.getId())));
        return local.toInstant(offset);
    }

    private static LocalDate day(TemporalAccessor taken) {
        return taken.query(TemporalQueries.localDate());
    }

    /** A text taken apart, if it names a day that there is. */
    private static Optional<TemporalAccessor> taken(String words, DateTimeFormatter form) {
        if (words.length() > LONGEST) {
            return Optional.empty();
        }
        String plain = words.strip()
                .replaceAll("\\s+", " ")
                .replaceFirst("(?i)([ap])\\.m\\.$", "$1m")
                .replaceFirst("(?i) ?(utc|gmt)$", "Z");
        try {
            return Optional.of(form.parse(plain)).filter(taken -> day(taken) != null);
        } catch (DateTimeException noSuchMoment) {
            return Optional.empty();
        }
    }

    private static Unfit noTime(String shown) {
        return new Unfit(Phrase.of("table.badTime", shown));
    }
}
