package io.github.weirwise.json;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Reason;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.SkimmerUnit;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Finds the shape that belongs to a Java type. */
final class Shapes {
    private final Map<Type, Shape<?>> known = new HashMap<>(Plain.SHAPES);
    private final MemberNames names;
    private final Shape<Reason> reasons;

    /** For documents of people: strict, in English words. */
    Shapes() {
        this(PhraseBook.ENGLISH_METRIC, true);
    }

    /**
     * @param book language and units of the words that are written
     * @param strict whether members that are not known here are errors; answers of a later library may hold some
     */
    Shapes(PhraseBook book, boolean strict) {
        this.names = new MemberNames(strict);
        known.put(Phrase.class, new PhraseShape(book, this, names));
        known.put(Reason.class, Shape.<Reason>of(this::reason, this::reason));
        reasons = record(Reason.class);
        known.put(SkimmerUnit.class, unit(record(SkimmerUnit.class)));
        known.put(Journal.class, journal(list(JournalItem.shape(of(JournalEntry.class)))));
    }

    /** The shape of a class. */
    @SuppressWarnings("unchecked")
    <T> Shape<T> of(Class<T> type) {
        return (Shape<T>) (Shape<?>) of((Type) type);
    }

    /** The shape of any type of a component. */
    @SuppressWarnings("unchecked")
    Shape<Object> of(Type type) {
        Shape<?> shape = known.get(type);
        if (shape == null) {
            shape = type instanceof ParameterizedType generic ? generic(generic) : plain((Class<?>) type);
            known.put(type, shape);
        }
        return (Shape<Object>) shape;
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private Shape<?> plain(Class<?> type) {
        if (type.isEnum()) {
            return Plain.word((Class) type);
        }
        if (type.isSealed()) {
            return new ChoiceShape<>(type, this);
        }
        if (type.isRecord()) {
            return record(type);
        }
        throw new IllegalStateException("no shape for " + type);
    }

    private <T> RecordShape<T> record(Class<T> type) {
        return new RecordShape<>(type, this, names);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private Shape<?> generic(ParameterizedType type) {
        Type[] parts = type.getActualTypeArguments();
        if (type.getRawType() == List.class) {
            return list(of(parts[0]));
        }
        if (type.getRawType() == Optional.class) {
            return optional(of(parts[0]));
        }
        if (type.getRawType() == Map.class) {
            return table((Class) parts[0], of(parts[1]));
        }
        throw new IllegalStateException("no shape for " + type);
    }

    private static <T> Shape<Optional<T>> optional(Shape<T> value) {
        return Shape.of(
                at -> Optional.of(value.read(at)),
                held -> held.map(value::write).orElse(null));
    }

    /** An array of equal shapes. */
    static <T> Shape<List<T>> list(Shape<T> element) {
        return Shape.of(at -> elements(element, at), values -> {
            ArrayNode array = JsonNodeFactory.instance.arrayNode();
            values.forEach(value -> array.add(element.write(value)));
            return array;
        });
    }

    private static <T> List<T> elements(Shape<T> element, Place at) {
        if (!at.node().isArray()) {
            throw at.wrong(Phrase.of("json.array", at.found()), Phrase.of("json.writeElementsBetween"));
        }
        if (at.node().size() > DocumentLimits.MOST_ELEMENTS) {
            throw at.wrong(
                    Phrase.of("json.elements", at.node().size(), DocumentLimits.MOST_ELEMENTS),
                    Phrase.of("json.leaveOutOldest"));
        }
        List<T> values = new ArrayList<>();
        for (int i = 0; i < at.node().size(); i++) {
            values.add(element.read(at.element(i)));
        }
        return values;
    }

    /** A value for each of some words, as an object; written in the order of the words. */
    private <E extends Enum<E>, T> Shape<Map<E, T>> table(Class<E> words, Shape<T> value) {
        List<String> all = Stream.of(words.getEnumConstants()).map(Enum::name).toList();
        return Shape.of(
                at -> {
                    names.check(at.asObject(), all);
                    Map<E, T> table = new EnumMap<>(words);
                    all.stream()
                            .map(at::member)
                            .filter(each -> !each.isMissing())
                            .forEach(each -> table.put(Enum.valueOf(words, each.name()), value.read(each)));
                    return table;
                },
                table -> {
                    ObjectNode object = JsonNodeFactory.instance.objectNode();
                    new TreeMap<>(table).forEach((word, each) -> object.set(word.name(), value.write(each)));
                    return object;
                });
    }

    /**
     * A journal as the array of its entries, in any order of time; written oldest first. Entries of the same identifier count
     * once.
     */
    private static Shape<Journal> journal(Shape<List<JournalItem>> items) {
        return Shape.of(
                at -> new Journal(JournalItem.once(items.read(at))),
                journal -> items.write(
                        journal.entries().stream().map(JournalItem::of).toList()));
    }

    private Reason reason(Place at) {
        return reasons.read(at);
    }

    /** A tree of reasons: {@code line} and, unless it is a leaf, {@code because}. */
    private JsonNode reason(Reason reason) {
        ObjectNode object = (ObjectNode) reasons.write(reason);
        return reason.because().isEmpty() ? object.without("because") : object;
    }

    /** A unit, whole or by the name of one of the Lantern Quay units; a whole one may bring its document's version along. */
    private static Shape<SkimmerUnit> unit(Shape<SkimmerUnit> whole) {
        Map<String, SkimmerUnit> byName = new LinkedHashMap<>();
        for (SkimmerUnit unit : LanternQuay.units()) {
            byName.put(unit.name().toLowerCase(Locale.ROOT).replace(' ', '-'), unit);
        }
        return Shape.of(
                at -> {
                    if (at.node().isString()) {
                        return named(byName, at);
                    }
                    FormatVersion.takeOptional(at.asObject());
                    return whole.read(at);
                },
                whole::write);
    }

    private static SkimmerUnit named(Map<String, SkimmerUnit> byName, Place at) {
        SkimmerUnit unit = byName.get(at.node().stringValue());
        if (unit == null) {
            throw at.wrong(
                    Phrase.of("json.notUnitKnown", at.found()),
                    Phrase.of("json.useOneGive", String.join(", ", byName.keySet())));
        }
        return unit;
    }
}
