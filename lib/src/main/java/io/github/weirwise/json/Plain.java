package io.github.weirwise.json;

import static java.util.Map.entry;

import io.github.weirwise.report.Phrase;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** Shapes of values that are not made of others. */
final class Plain {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** A finite number, written without quotes. */
    static final Shape<Double> NUMBER = Shape.of(Plain::number, Plain::node);
    /** A text that can be written as UTF-8, so without half characters. */
    static final Shape<String> TEXT = Shape.of(Plain::text, NODES::stringNode);

    /** All of them by type. */
    static final Map<Class<?>, Shape<?>> SHAPES = Map.ofEntries(
            entry(double.class, NUMBER),
            entry(Double.class, NUMBER),
            entry(OptionalDouble.class, Shape.of(Plain::held, Plain::node)),
            entry(int.class, Shape.of(Plain::count, NODES::numberNode)),
            entry(long.class, Shape.of(Plain::longCount, NODES::numberNode)),
            entry(boolean.class, Shape.of(Plain::flag, NODES::booleanNode)),
            entry(Boolean.class, Shape.of(Plain::flag, NODES::booleanNode)),
            entry(String.class, TEXT),
            entry(Instant.class, Shape.of(Plain::instant, at -> NODES.stringNode(at.toString()))),
            entry(ZoneId.class, Shape.of(Plain::zone, zone -> NODES.stringNode(zone.getId()))),
            entry(LocalDate.class, Shape.of(Plain::date, date -> NODES.stringNode(date.toString()))));

    private Plain() {}

    private static double number(Place at) {
        if (!at.node().isNumber()) {
            throw at.wrong(Phrase.of("json.number", at.found()), Phrase.of("json.writeDigitsWithout"));
        }
        double value = at.node().doubleValue();
        if (!Double.isFinite(value)) {
            throw at.wrong(Phrase.of("json.tooLargeFor", at.found()), Phrase.of("json.giveFiniteNumber"));
        }
        return value;
    }

    private static JsonNode node(double value) {
        if (!Double.isFinite(value)) {
            throw new DocumentException(
                    "$", Phrase.of("json.numberJsonFinite", String.valueOf(value)), Phrase.of("json.checkInputs"));
        }
        return NODES.numberNode(value);
    }

    private static OptionalDouble held(Place at) {
        return OptionalDouble.of(number(at));
    }

    private static JsonNode node(OptionalDouble held) {
        return held.isPresent() ? node(held.getAsDouble()) : null;
    }

    /** A whole number; 2.0 is one as well. */
    private static int count(Place at) {
        double value = number(at);
        if (value != Math.rint(value) || Math.abs(value) > Integer.MAX_VALUE) {
            throw at.wrong(Phrase.of("json.wholeNumber", at.found()), Phrase.of("json.giveCount"));
        }
        return (int) value;
    }

    private static long longCount(Place at) {
        if (!at.node().isIntegralNumber() || !at.node().canConvertToLong()) {
            throw at.wrong(Phrase.of("json.wholeNumber", at.found()), Phrase.of("json.giveCount"));
        }
        return at.node().longValue();
    }

    private static boolean flag(Place at) {
        if (!at.node().isBoolean()) {
            throw at.wrong(Phrase.of("json.trueFalse", at.found()), Phrase.of("json.writeWithoutQuotes"));
        }
        return at.node().booleanValue();
    }

    private static String text(Place at) {
        if (!at.node().isString()) {
            throw at.wrong(Phrase.of("json.text", at.found()), Phrase.of("json.writeDoubleQuotes"));
        }
        String text = at.node().stringValue();
        if (text.codePoints().anyMatch(c -> Character.getType(c) == Character.SURROGATE)) {
            throw at.wrong(Phrase.of("json.holdsHalfCharacter"), Phrase.of("json.sendWholeUnicode"));
        }
        return text;
    }

    /** A point in time by RFC 3339, {@code 2026-03-01T08:00:00Z} or with an offset; written in UTC. */
    private static Instant instant(Place at) {
        Instant instant = parsed(at);
        if (instant.isBefore(DocumentLimits.EARLIEST) || instant.isAfter(DocumentLimits.LATEST)) {
            throw at.wrong(
                    Phrase.of(
                            "json.mustBeBetween",
                            at.found(),
                            String.valueOf(DocumentLimits.EARLIEST),
                            String.valueOf(DocumentLimits.LATEST)),
                    Phrase.of("json.checkYear"));
        }
        return instant;
    }

    private static Instant parsed(Place at) {
        Phrase tryThis = Phrase.of("json.writeTZ");
        if (!at.node().isString()) {
            throw at.wrong(Phrase.of("json.timeText", at.found()), tryThis);
        }
        try {
            return Instant.parse(at.node().stringValue());
        } catch (DateTimeException e) {
            throw at.wrong(Phrase.of("json.dateTimeZone", at.found()), tryThis, e);
        }
    }

    static ZoneId zone(Place at) {
        try {
            return ZoneId.of(text(at));
        } catch (DateTimeException e) {
            throw at.wrong(Phrase.of("json.notTimeZone", at.found()), Phrase.of("json.writeEuropeLisbon"), e);
        }
    }

    private static LocalDate date(Place at) {
        try {
            return LocalDate.parse(text(at));
        } catch (DateTimeException e) {
            throw at.wrong(Phrase.of("json.notDay", at.found()), Phrase.of("json.write"), e);
        }
    }

    /** One of a fixed list of words, spelled as the constant. */
    static <E extends Enum<E>> Shape<E> word(Class<E> words) {
        List<String> names =
                Arrays.stream(words.getEnumConstants()).map(Enum::name).toList();
        return Shape.of(at -> word(words, names, at), word -> NODES.stringNode(word.name()));
    }

    private static <E extends Enum<E>> E word(Class<E> words, List<String> names, Place at) {
        if (!at.node().isString() || !names.contains(at.node().stringValue())) {
            throw at.wrong(
                    Phrase.of("json.notOneWords", at.found()), Phrase.of("json.useOne", String.join(", ", names)));
        }
        return Enum.valueOf(words, at.node().stringValue());
    }
}
