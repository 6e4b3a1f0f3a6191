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
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
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

    private static final List<String> NAMES = List.of("key", "values", "text");

    private final TextShape text = new TextShape();
    private final NumberShape number = new NumberShape();
    private final InstantShape instant = new InstantShape();
    private final FlagShape flag = new FlagShape();
    private final CountShape counted = new CountShape();
    private final WordShape<Unit> unit = new WordShape<>(Unit.class);
    private final ListShape<Object> values = new ListShape<>(new ValueShape());
    private final PhraseBook book;
    private final MemberNames spelling;

    PhraseShape(PhraseBook book, MemberNames spelling) {
        this.book = book;
        this.spelling = spelling;
    }

    @Override
    public Phrase read(Place at) {
        spelling.check(at.asObject(), NAMES);
        String key = key(given(at, "key"));
        if (!at.member("text").isMissing()) {
            text.read(at.member("text"));
        }
        return new Phrase(key, values.read(given(at, "values")));
    }

    private String key(Place at) {
        if (!KEY.matcher(text.read(at)).matches()) {
            throw at.wrong(Phrase.of("json.notTextKey", at.found()), Phrase.of("json.writeAdviceHold"));
        }
        return text.read(at);
    }

    @Override
    public JsonNode write(Phrase phrase) {
        ObjectNode object = JsonNodeFactory.instance.objectNode().put("key", phrase.key());
        object.set("values", values.write(phrase.values()));
        try {
            object.put("text", book.say(phrase));
        } catch (IllegalArgumentException noText) {
            // A key of another version: its words are not known here, key and values still stand.
            return object;
        }
        return object;
    }

    private static Place given(Place at, String name) {
        Place member = at.member(name);
        if (member.isMissing()) {
            throw member.wrong(Phrase.of("json.missing"), Phrase.of("json.give", name));
        }
        return member;
    }

    private final class ValueShape implements Shape<Object> {
        @Override
        public Object read(Place at) {
            if (at.node().isString()) {
                return text.read(at);
            }
            if (at.node().isArray()) {
                List<Object> parts = new ArrayList<>();
                for (int i = 0; i < at.node().size(); i++) {
                    parts.add(read(at.element(i)));
                }
                return parts;
            }
            if (!at.node().isObject()) {
                return plainNumber(at);
            }
            return at.node().has("key") ? PhraseShape.this.read(at) : measure(at);
        }

        /** A count stays a count, so that it prints without decimals. */
        private Object plainNumber(Place at) {
            Double value = number.read(at);
            if (at.node().isIntegralNumber() && at.node().canConvertToInt()) {
                return at.node().intValue();
            }
            return value;
        }

        private Object measure(Place at) {
            if (at.node().has("count")) {
                spelling.check(at, List.of("count", "of"));
                int count = counted.read(at.member("count"));
                if (count < 0) {
                    throw at.member("count")
                            .wrong(Phrase.of("json.mustNotBeNegative", count), Phrase.of("json.giveCount"));
                }
                return new Count(count, key(given(at, "of")));
            }
            if (at.node().has("at")) {
                spelling.check(at, List.of("at", "zone", "told"));
                return new Moment(
                        instant.read(at.member("at")), zone(given(at, "zone")), instant.read(given(at, "told")));
            }
            if (at.node().has("practiceHours")) {
                spelling.check(at, List.of("practiceHours"));
                return new PracticeTime(number.read(at.member("practiceHours")));
            }
            if (at.node().has("date")) {
                spelling.check(at, List.of("date"));
                return date(at.member("date"));
            }
            if (at.node().has("value")) {
                spelling.check(at, List.of("value", "unit"));
                return new Quantity(number.read(at.member("value")), unit.read(given(at, "unit")));
            }
            spelling.check(at, List.of("low", "high", "unit", "stated"));
            double low = number.read(given(at, "low"));
            double high = number.read(given(at, "high"));
            if (low > high) {
                throw at.wrong(
                        Phrase.of("json.lowNotAbove", String.valueOf(low), String.valueOf(high)),
                        Phrase.of("json.swapThem"));
            }
            Range range = new Range(low, high);
            Unit of = unit.read(given(at, "unit"));
            boolean stated = at.node().has("stated") && flag.read(at.member("stated"));
            return stated ? Band.of(range, of) : QuantityRange.of(range, of);
        }

        private ZoneId zone(Place at) {
            try {
                return ZoneId.of(text.read(at));
            } catch (DateTimeException e) {
                throw at.wrong(Phrase.of("json.notTimeZone", at.found()), Phrase.of("json.writeEuropeLisbon"));
            }
        }

        private LocalDate date(Place at) {
            try {
                return LocalDate.parse(text.read(at));
            } catch (DateTimeException e) {
                throw at.wrong(Phrase.of("json.notDay", at.found()), Phrase.of("json.write"));
            }
        }

        @Override
        public JsonNode write(Object value) {
            if (value instanceof Quantity quantity) {
                ObjectNode object = JsonNodeFactory.instance.objectNode();
                object.set("value", number.write(quantity.value()));
                return object.put("unit", quantity.unit().name());
            }
            if (value instanceof QuantityRange range) {
                return ends(range.range().low(), range.range().high(), range.unit());
            }
            if (value instanceof Band band) {
                return ends(band.range().low(), band.range().high(), band.unit())
                        .put("stated", true);
            }
            if (value instanceof Bounds bounds) {
                return ends(bounds.low(), bounds.high(), bounds.unit());
            }
            if (value instanceof Count count) {
                return JsonNodeFactory.instance
                        .objectNode()
                        .put("count", count.number())
                        .put("of", count.key());
            }
            if (value instanceof Moment moment) {
                return JsonNodeFactory.instance
                        .objectNode()
                        .put("at", moment.at().toString())
                        .put("zone", moment.zone().getId())
                        .put("told", moment.told().toString());
            }
            if (value instanceof PracticeTime time) {
                return JsonNodeFactory.instance.objectNode().put("practiceHours", time.hours());
            }
            if (value instanceof LocalDate date) {
                return JsonNodeFactory.instance.objectNode().put("date", date.toString());
            }
            if (value instanceof Phrase phrase) {
                return PhraseShape.this.write(phrase);
            }
            if (value instanceof List<?> parts) {
                ArrayNode array = JsonNodeFactory.instance.arrayNode();
                parts.forEach(part -> array.add(write(part)));
                return array;
            }
            if (value instanceof Integer count) {
                return JsonNodeFactory.instance.numberNode(count);
            }
            if (value instanceof Number plain) {
                return number.write(plain.doubleValue());
            }
            return text.write(value.toString());
        }

        private static ObjectNode ends(double low, double high, Unit unit) {
            return JsonNodeFactory.instance
                    .objectNode()
                    .put("low", low)
                    .put("high", high)
                    .put("unit", unit.name());
        }
    }
}
