package io.github.weirwise.json;

import static java.util.Map.entry;

import io.github.weirwise.advice.Efforts;
import io.github.weirwise.advice.Step;
import io.github.weirwise.reading.AdviceGiven;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Reason;
import io.github.weirwise.report.UnitSystem;
import io.github.weirwise.table.DateOrder;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.FoamTraits;
import io.github.weirwise.unit.Layout;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds the shape that belongs to a Java type. */
final class Shapes {
    /** Components that may be left out, with what they are then. */
    private static final Map<Class<?>, Map<String, Object>> WHEN_MISSING = Map.ofEntries(
            entry(Settings.class, Map.of("condition", Condition.REFERENCE)),
            entry(SkimmerUnit.class, Map.of("traits", FoamTraits.USUAL, "layout", Layout.IN_SUMP)),
            entry(Reading.class, Map.of("by", "")),
            entry(Observation.CupVolume.class, Map.of("full", false)),
            entry(WeirMove.class, Map.of("probe", false)),
            entry(Step.MoveWeir.class, Map.of("probe", false)),
            entry(Step.ServicePart.class, Map.of("also", List.of())),
            entry(Asked.Upkeep.class, Map.of("vesselMl", 0.0)),
            entry(
                    Asked.Calendar.class,
                    Map.of("vesselMl", 0.0, "name", "", "zone", "UTC", "days", 90, "tasks", List.of())),
            entry(Asked.Table.class, Map.of("zone", "UTC", "dateOrder", DateOrder.UNSTATED, "soundRowsOnly", false)),
            entry(
                    ServiceOptions.class,
                    Map.of(
                            "cannotMeasure",
                            List.of(),
                            "canMeasure",
                            List.of(),
                            "efforts",
                            Efforts.USUAL,
                            "units",
                            UnitSystem.METRIC,
                            "language",
                            "en",
                            "detail",
                            ServiceOptions.Detail.FULL)),
            entry(
                    Efforts.class,
                    Map.of(
                            "dayOut", Efforts.USUAL.dayOut(),
                            "floodedDay", Efforts.USUAL.floodedDay(),
                            "move", Efforts.USUAL.move(),
                            "look", Efforts.USUAL.look(),
                            "work", Efforts.USUAL.work(),
                            "fouledPartDay", Efforts.USUAL.fouledPartDay())),
            entry(AdviceGiven.class, Map.of("followed", AdviceGiven.Followed.OPEN)));

    private final Map<Type, Shape<?>> known = new HashMap<>();
    private final MemberNames names;

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
        known.put(double.class, new NumberShape());
        known.put(Double.class, new NumberShape());
        known.put(OptionalDouble.class, new OptionalNumberShape());
        known.put(int.class, new CountShape());
        known.put(long.class, new LongShape());
        known.put(boolean.class, new FlagShape());
        known.put(String.class, new TextShape());
        known.put(Instant.class, new InstantShape());
        known.put(Phrase.class, new PhraseShape(book, names));
        known.put(Reason.class, new ReasonShape(new PhraseShape(book, names), names));
        known.put(SkimmerUnit.class, new UnitShape(record(SkimmerUnit.class)));
        known.put(Journal.class, new JournalShape(new ListShape<>(new ItemShape(of(JournalEntry.class)))));
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

    private Shape<?> plain(Class<?> type) {
        if (type.isEnum()) {
            return words(type);
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
        return new RecordShape<>(type, whenMissing(type), this, names);
    }

    /** Components of a record that may be left out, with what they are then. */
    static Map<String, Object> whenMissing(Class<?> type) {
        return WHEN_MISSING.getOrDefault(type, PracticeDefaults.of(type));
    }

    private Shape<?> generic(ParameterizedType type) {
        Type[] parts = type.getActualTypeArguments();
        if (type.getRawType() == List.class) {
            return new ListShape<>(of(parts[0]));
        }
        if (type.getRawType() == Optional.class) {
            return new OptionalShape<>(of(parts[0]));
        }
        if (type.getRawType() == Map.class) {
            return table((Class<?>) parts[0], of(parts[1]));
        }
        throw new IllegalStateException("no shape for " + type);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Shape<?> words(Class<?> type) {
        return new WordShape(type);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private Shape<?> table(Class<?> words, Shape<Object> value) {
        return new TableShape(words, value, names);
    }
}
