package io.github.weirwise.json;

import io.github.weirwise.report.Band;
import io.github.weirwise.report.Bounds;
import io.github.weirwise.report.Count;
import io.github.weirwise.report.Moment;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.PracticeTime;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.WrongValueException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A sentence as key, typed values and, for readers without our texts, the words of one language. A value is a text, a number, a
 * list, or an object: a quantity ({@code value, unit}), a range ({@code low, high, unit}, {@code stated} when it is no estimate), a number of things ({@code count, of}), a
 * time ({@code at, zone, told}, {@code practiceHours} or {@code date}) or another sentence ({@code key, values}).
 */
final class PhraseShape implements Shape<Phrase> {
    /** A key also names the package that owns the text, so nothing but plain names is let through. */
    private static final Pattern KEY = Pattern.compile("[A-Za-z]{1,40}(\\.[A-Za-z0-9_]{1,80}){1,6}");

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final List<String> NAMES = List.of("key", "values", "text");

    private final Shape<Quantity> quantity;
    private final Shape<Moment> moment;
    private final Shape<Counted> counted;
    private final Shape<Practised> practised;
    private final Shape<Day> day;
    private final Shape<Ends> ends;
    private final Shape<List<Object>> values = Shapes.list(Shape.of(this::value, this::node));
    private final PhraseBook book;
    private final MemberNames spelling;

    PhraseShape(PhraseBook book, Shapes shapes, MemberNames spelling) {
        this.book = book;
        this.spelling = spelling;
        quantity = shapes.of(Quantity.class);
        moment = shapes.of(Moment.class);
        counted = shapes.of(Counted.class);
        practised = shapes.of(Practised.class);
        day = shapes.of(Day.class);
        ends = shapes.of(Ends.class);
    }

    /** How a {@link Count} stands in a document. */
    record Counted(int count, String of) {
        Counted {
            if (count < 0) {
                throw new WrongValueException(
                        "count", Phrase.of("json.mustNotBeNegative", count), Phrase.of("json.giveCount"));
            }
        }
    }

    /** How a {@link PracticeTime} stands in a document. */
    record Practised(double practiceHours) {}

    /** How a day stands in a document. */
    record Day(LocalDate date) {}

    /** How a {@link QuantityRange}, a {@link Band} and {@link Bounds} stand in a document. */
    record Ends(double low, double high, Unit unit, Optional<Boolean> stated) {
        Ends {
            if (low > high) {
                throw new WrongValueException(
                        "both",
                        Phrase.of("json.lowNotAbove", String.valueOf(low), String.valueOf(high)),
                        Phrase.of("json.swapThem"));
            }
        }
    }

    @Override
    public Phrase read(Place at) {
        spelling.check(at.asObject(), NAMES);
        String key = key(at.member("key").given());
        if (!at.member("text").isMissing()) {
            Plain.TEXT.read(at.member("text"));
        }
        return new Phrase(key, values.read(at.member("values").given()));
    }

    private static String key(Place at) {
        String key = Plain.TEXT.read(at);
        if (!KEY.matcher(key).matches()) {
            throw at.wrong(Phrase.of("json.notTextKey", at.found()), Phrase.of("json.writeAdviceHold"));
        }
        return key;
    }

    @Override
    public JsonNode write(Phrase phrase) {
        ObjectNode object = NODES.objectNode().put("key", phrase.key());
        object.set("values", values.write(phrase.values()));
        try {
            object.put("text", book.say(phrase));
        } catch (IllegalArgumentException noText) {
            // A key of another version: its words are not known here, key and values still stand.
            return object;
        }
        return object;
    }

    private Object value(Place at) {
        if (at.node().isString()) {
            return Plain.TEXT.read(at);
        }
        if (at.node().isArray()) {
            return values.read(at);
        }
        if (!at.node().isObject()) {
            return plainNumber(at);
        }
        return at.node().has("key") ? read(at) : measure(at);
    }

    /** A count stays a count, so that it prints without decimals. */
    private static Object plainNumber(Place at) {
        Double value = Plain.NUMBER.read(at);
        boolean count = at.node().isIntegralNumber() && at.node().canConvertToInt();
        return count ? (Object) at.node().intValue() : value;
    }

    private Object measure(Place at) {
        if (at.node().has("count")) {
            Counted given = counted.read(at);
            return new Count(given.count(), key(at.member("of")));
        }
        if (at.node().has("at")) {
            return moment.read(at);
        }
        if (at.node().has("practiceHours")) {
            return new PracticeTime(practised.read(at).practiceHours());
        }
        if (at.node().has("date")) {
            return day.read(at).date();
        }
        if (at.node().has("value")) {
            return quantity.read(at);
        }
        Ends given = ends.read(at);
        Range range = new Range(given.low(), given.high());
        return given.stated().orElse(false) ? Band.of(range, given.unit()) : QuantityRange.of(range, given.unit());
    }

    private JsonNode node(Object value) {
        if (value instanceof Quantity measured) {
            return quantity.write(measured);
        }
        if (value instanceof QuantityRange range) {
            return ends(range.range().low(), range.range().high(), range.unit());
        }
        if (value instanceof Band band) {
            return ends(band.range().low(), band.range().high(), band.unit()).put("stated", true);
        }
        if (value instanceof Bounds bounds) {
            return ends(bounds.low(), bounds.high(), bounds.unit());
        }
        if (value instanceof Count count) {
            return counted.write(new Counted(count.number(), count.key()));
        }
        if (value instanceof Moment told) {
            return moment.write(told);
        }
        if (value instanceof PracticeTime time) {
            return practised.write(new Practised(time.hours()));
        }
        if (value instanceof LocalDate date) {
            return day.write(new Day(date));
        }
        if (value instanceof Phrase phrase) {
            return write(phrase);
        }
        if (value instanceof List<?> parts) {
            return values.write(List.copyOf(parts));
        }
        if (value instanceof Integer count) {
            return NODES.numberNode(count);
        }
        return value instanceof Number plain
                ? Plain.NUMBER.write(plain.doubleValue())
                : Plain.TEXT.write(value.toString());
    }

    /** Bounds may be infinite, so they do not go through the shape of numbers. */
    private static ObjectNode ends(double low, double high, Unit unit) {
        return NODES.objectNode().put("low", low).put("high", high).put("unit", unit.name());
    }
}
