package io.github.weirwise.sheet;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Optional;

/**
 * Moments as people write them in a table: ISO 8601 with a blank or a T between day and time, seconds and an offset allowed.
 * A day alone means noon. Days with strokes or dots are refused, because half the world reads them the other way round.
 *
 * @param zone time zone of moments without an offset
 */
record TableMoment(ZoneId zone) {
    private static final DateTimeFormatter LOCAL = form("uuuu-MM-dd[ ]['T'][ ]H:mm[:ss][.SSS]");
    private static final DateTimeFormatter WITH_OFFSET = form("uuuu-MM-dd[ ]['T'][ ]H:mm[:ss][.SSS][ ]XXX");
    private static final DateTimeFormatter DAY = form("uuuu-MM-dd");
    private static final DateTimeFormatter CLOCK = form("H:mm[:ss]");
    private static final int FIRST_YEAR = 1970;
    private static final int LAST_YEAR = 2200;

    /** The moment that some words name, if they name one from 1970 to 2200. */
    Optional<Instant> read(String words) {
        try {
            return inRange(parsed(words.strip()));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** The same from a day and a time of day in two columns. */
    Optional<Instant> read(String day, String clock) {
        try {
            LocalDate date = LocalDate.parse(day.strip(), DAY);
            LocalTime time = clock.isBlank() ? LocalTime.NOON : LocalTime.parse(clock.strip(), CLOCK);
            return inRange(date.atTime(time).atZone(zone).toInstant());
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private Instant parsed(String words) {
        if (words.length() <= "2026-05-04".length()) {
            return LocalDate.parse(words, DAY)
                    .atTime(LocalTime.NOON)
                    .atZone(zone)
                    .toInstant();
        }
        boolean offset = words.matches(".*(Z|[+-]\\d\\d:\\d\\d)");
        return offset
                ? OffsetDateTime.parse(words, WITH_OFFSET).toInstant()
                : LocalDateTime.parse(words, LOCAL).atZone(zone).toInstant();
    }

    private Optional<Instant> inRange(Instant at) {
        int year = at.atZone(zone).getYear();
        return year >= FIRST_YEAR && year <= LAST_YEAR ? Optional.of(at) : Optional.empty();
    }

    private static DateTimeFormatter form(String pattern) {
        return DateTimeFormatter.ofPattern(pattern, Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);
    }
}
