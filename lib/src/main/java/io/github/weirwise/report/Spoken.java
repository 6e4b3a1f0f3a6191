package io.github.weirwise.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.NumberFormat;

/** Numbers in words: the one rule for rounding, units, and times told in the unit that suits their length. */
final class Spoken {
    private static final double MINUTES_AN_HOUR = 60;
    private static final double HOURS_A_DAY = 24;

    private final PhraseBook book;

    Spoken(PhraseBook book) {
        this.book = book;
    }

    String quantity(Quantity quantity) {
        Quantity told = suited(quantity);
        if (told.unit() == Unit.CHANCE && told.value() < 0.05) {
            return say("report.under", number(0.05, Unit.CHANCE, true));
        }
        if (told.unit() == Unit.CHANCE && told.value() > 0.95) {
            return say("report.over", number(0.95, Unit.CHANCE, true));
        }
        return number(told.value(), told.unit(), true);
    }

    /** An estimate: neither end is known better than to a tenth of the width. */
    String range(QuantityRange estimate) {
        return between(estimate.range(), estimate.unit(), true);
    }

    /** What was stated: both ends as they are. */
    String band(Band stated) {
        return between(stated.range(), stated.unit(), false);
    }

    private String between(Range range, Unit held, boolean estimated) {
        Unit unit = suited(Quantity.of(range.high(), held)).unit();
        double low = shown(in(range.low(), held, unit), unit);
        double high = shown(in(range.high(), held, unit), unit);
        Rounding rounding = unit.rounding(book.units());
        BigDecimal[] ends =
                estimated ? rounding.round(low, high) : new BigDecimal[] {rounding.round(low), rounding.round(high)};
        if (ends[0].compareTo(ends[1]) == 0) {
            return quantity(Quantity.of(range.middle(), held));
        }
        String last = withSymbol(text(ends[1], true), ends[1], unit);
        boolean fromNothing = ends[0].signum() == 0 && isTime(unit);
        return fromNothing ? say("report.upTo", last) : say("report.range", text(ends[0], true), last);
    }

    /** The rounded number, with its unit or without. */
    String number(double value, Unit unit, boolean withUnit) {
        BigDecimal rounded = unit.rounding(book.units()).round(shown(value, unit));
        String text = text(rounded, true);
        return withUnit ? withSymbol(text, rounded, unit) : text;
    }

    /** Limits as they would be typed: in other units than their own a little narrower, so that the ends are allowed. */
    String bounds(Bounds limit) {
        String low = typed(limit.low(), limit.unit(), RoundingMode.CEILING);
        String high = typed(limit.high(), limit.unit(), RoundingMode.FLOOR);
        String between = limit.low() == limit.high() || Double.isNaN(limit.low())
                ? typed(limit.low(), limit.unit())
                : say("report.range", low, high);
        BigDecimal last = Double.isFinite(limit.high()) ? BigDecimal.valueOf(limit.high()) : BigDecimal.TEN;
        return withSymbol(between, last, limit.unit());
    }

    String typed(double value, Unit unit) {
        return typed(value, unit, RoundingMode.HALF_UP);
    }

    private String typed(double value, Unit unit, RoundingMode mode) {
        return Double.isFinite(value)
                ? text(Rounding.typed(shown(value, unit), isOwn(unit) ? 6 : 4, mode), false)
                : String.valueOf(value);
    }

    /** Whether the reader's unit is the one in which the number is held. */
    private boolean isOwn(Unit unit) {
        return unit.symbol(book.units()).equals(unit.symbol(UnitSystem.METRIC));
    }

    private double shown(double value, Unit unit) {
        return unit.toShown(value, book.units());
    }

    private String text(BigDecimal number, boolean grouped) {
        NumberFormat format = NumberFormat.getNumberInstance(book.locale());
        format.setMinimumFractionDigits(0);
        format.setMaximumFractionDigits(Math.max(0, number.stripTrailingZeros().scale()));
        format.setGroupingUsed(grouped);
        return format.format(number);
    }

    private String withSymbol(String number, BigDecimal value, Unit unit) {
        String symbol = unit == Unit.DAY
                ? say(value.abs().compareTo(BigDecimal.ONE) == 0 ? "report.unit.day" : "report.unit.days")
                : unit.symbol(book.units());
        return symbol.isEmpty() ? number : number + " " + symbol;
    }

    /** Half a day is 12 h, and 96 h are 4 days. */
    private static Quantity suited(Quantity quantity) {
        double value = quantity.value();
        double size = Math.abs(value);
        return switch (quantity.unit()) {
            case MINUTE -> size < 90 ? quantity : suited(Quantity.of(value / MINUTES_AN_HOUR, Unit.HOUR));
            case HOUR -> hours(quantity);
            case DAY -> size == 0 || size >= 0.97 ? quantity : suited(Quantity.of(value * HOURS_A_DAY, Unit.HOUR));
            default -> quantity;
        };
    }

    private static Quantity hours(Quantity quantity) {
        double value = quantity.value();
        double size = Math.abs(value);
        if (size >= 3 * HOURS_A_DAY) {
            return Quantity.of(value / HOURS_A_DAY, Unit.DAY);
        }
        if (size == 0 || size * MINUTES_AN_HOUR >= 57.5) {
            return quantity;
        }
        double minutes = value * MINUTES_AN_HOUR;
        return Quantity.of(Math.abs(minutes) < 10 ? minutes : 5 * Math.round(minutes / 5), Unit.MINUTE);
    }

    /** The same time in another unit of time. */
    private static double in(double value, Unit from, Unit to) {
        return from == to ? value : value * minutes(from) / minutes(to);
    }

    private static double minutes(Unit unit) {
        return switch (unit) {
            case MINUTE -> 1;
            case HOUR -> MINUTES_AN_HOUR;
            case DAY -> HOURS_A_DAY * MINUTES_AN_HOUR;
            default -> throw new IllegalArgumentException(unit + " is no time that is told in another unit");
        };
    }

    private static boolean isTime(Unit unit) {
        return unit == Unit.MINUTE || unit == Unit.HOUR || unit == Unit.DAY;
    }

    private String say(String key, Object... values) {
        return book.say(Phrase.of(key, values));
    }
}
