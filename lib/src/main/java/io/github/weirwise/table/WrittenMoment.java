package io.github.weirwise.table;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * A moment as it stands in a table, taken apart but not yet understood: {@code 2026-05-04 08:30}, {@code 31.05.2026},
 * {@code 5/1/2026 8:30 AM}, with seconds and an offset allowed.
 *
 * @param form how the day is written
 * @param first the day's first number
 * @param second its second number
 * @param third its third number
 * @param clock time of day, if there is one
 * @param offset offset from UTC, if it is said
 */
record WrittenMoment(
        Form form, int first, int second, int third, Optional<LocalTime> clock, Optional<ZoneOffset> offset) {
    /** Ways to write a day. */
    enum Form {
        YEAR_FIRST,
        DAY_FIRST,
        OPEN
    }

    private static final int LONGEST = 60;
    private static final int CENTURY = 2000;

    /** Takes a text apart, if it is a moment. */
    static Optional<WrittenMoment> of(String words) {
        String text = words.strip();
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        try {
            return Optional.ofNullable(read(new Scanner(text)));
        } catch (DateTimeException noSuchTimeOfDay) {
            return Optional.empty();
        }
    }

    /** What the numbers say about the order; unstated when both orders give a day. */
    DateOrder order() {
        if (form != Form.OPEN || first > 12 == second > 12) {
            return DateOrder.UNSTATED;
        }
        return first > 12 ? DateOrder.DAY_FIRST : DateOrder.MONTH_FIRST;
    }

    /** Whether an order must be known to understand it. */
    boolean isOpen() {
        return form == Form.OPEN && first != second;
    }

    /**
     * The day.
     *
     * @throws DateTimeException if there is no such day
     */
    LocalDate day(DateOrder order) {
        return switch (form) {
            case YEAR_FIRST -> LocalDate.of(first, second, third);
            case DAY_FIRST -> LocalDate.of(third, second, first);
            case OPEN ->
                order == DateOrder.MONTH_FIRST
                        ? LocalDate.of(third, first, second)
                        : LocalDate.of(third, second, first);
        };
    }

    private static WrittenMoment read(Scanner scanner) {
        int year = scanner.digits(4, 4);
        boolean yearFirst = year >= 0;
        int first = yearFirst ? year : scanner.digits(1, 2);
        char between = scanner.peek();
        if (first < 0 || !scanner.take("-/.")) {
            return null;
        }
        int second = scanner.digits(1, 2);
        if (second < 0 || !scanner.take(String.valueOf(between))) {
            return null;
        }
        int third = yearFirst ? scanner.digits(1, 2) : year(scanner, between != '-');
        if (third < 0) {
            return null;
        }
        Form form = yearFirst ? Form.YEAR_FIRST : between == '.' ? Form.DAY_FIRST : Form.OPEN;
        scanner.take(",");
        scanner.blanks();
        scanner.take("T");
        scanner.blanks();
        Optional<LocalTime> clock = clock(scanner);
        scanner.blanks();
        Optional<ZoneOffset> offset = clock.isPresent() ? offset(scanner) : Optional.empty();
        return scanner.atEnd() ? new WrittenMoment(form, first, second, third, clock, offset) : null;
    }

    private static int year(Scanner scanner, boolean mayBeShort) {
        int four = scanner.digits(4, 4);
        int two = four < 0 && mayBeShort ? scanner.digits(2, 2) : -1;
        return two < 0 ? four : CENTURY + two;
    }

    private static Optional<LocalTime> clock(Scanner scanner) {
        int hour = scanner.digits(1, 2);
        if (hour < 0 || !scanner.take(":")) {
            return Optional.empty();
        }
        int minute = scanner.digits(2, 2);
        int second = scanner.take(":") ? scanner.digits(2, 2) : 0;
        if (scanner.take(".")) {
            scanner.run(Scanner.DIGITS);
        }
        scanner.blanks();
        char half = Character.toLowerCase(scanner.peek());
        if (scanner.take("aApP")) {
            scanner.take(".");
            boolean sound = scanner.take("mM") && hour >= 1 && hour <= 12;
            scanner.take(".");
            hour = sound ? hour % 12 + (half == 'p' ? 12 : 0) : -1;
        }
        return Optional.of(LocalTime.of(hour, minute, second));
    }

    private static Optional<ZoneOffset> offset(Scanner scanner) {
        if (scanner.take("Z")) {
            return Optional.of(ZoneOffset.UTC);
        }
        int sign = scanner.peek() == '-' ? -1 : 1;
        if (!scanner.take("+-")) {
            return Optional.empty();
        }
        int together = scanner.digits(4, 4);
        int hours = together < 0 ? scanner.digits(2, 2) : together / 100;
        int minutes = together < 0 ? scanner.take(":") ? scanner.digits(2, 2) : 0 : together % 100;
        if (hours < 0 || minutes < 0 || minutes > 59) {
            throw new DateTimeException("no offset");
        }
        return Optional.of(ZoneOffset.ofHoursMinutes(sign * hours, sign * minutes));
    }
}
