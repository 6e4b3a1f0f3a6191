package io.github.weirwise.json;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Efforts;
import io.github.weirwise.advice.Expectation;
import io.github.weirwise.advice.Step;
import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.diagnosis.CauseShare;
import io.github.weirwise.diagnosis.Diagnosis;
import io.github.weirwise.practice.Act;
import io.github.weirwise.practice.Coaching;
import io.github.weirwise.practice.Goals;
import io.github.weirwise.practice.HiddenFault;
import io.github.weirwise.practice.Limits;
import io.github.weirwise.practice.Look;
import io.github.weirwise.practice.Message;
import io.github.weirwise.practice.Offers;
import io.github.weirwise.practice.Prediction;
import io.github.weirwise.practice.Question;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.ScenarioEvent;
import io.github.weirwise.practice.ScenarioStart;
import io.github.weirwise.practice.ScenarioTank;
import io.github.weirwise.practice.SessionOptions;
import io.github.weirwise.practice.SessionRecord;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.setup.DisplayTank;
import io.github.weirwise.setup.Drainage;
import io.github.weirwise.setup.ExtraSump;
import io.github.weirwise.setup.FilterBody;
import io.github.weirwise.setup.Fitting;
import io.github.weirwise.setup.Installation;
import io.github.weirwise.setup.Overflow;
import io.github.weirwise.setup.Plumbing;
import io.github.weirwise.setup.PumpCurve;
import io.github.weirwise.setup.PumpPoint;
import io.github.weirwise.setup.ReturnLine;
import io.github.weirwise.setup.SkimmateHose;
import io.github.weirwise.setup.Stand;
import io.github.weirwise.tank.TankEvent;
import io.github.weirwise.tank.TankParameter;
import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.FoamTraits;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Target;
import io.github.weirwise.unit.Weir;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Makes the schemas anew from the records: which members there are and must be, between which limits, which words. Only
 * descriptions, bounds of lengths and references are taken over from the schema as it stands.
 */
final class SchemaWriter {
    /** Stands where somebody has to say what a new member is. */
    static final String UNDESCRIBED = "describe this member";

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private record Row(String schema, String pointer, Class<?> type) {}

    private static final List<Row> RECORDS = List.of(
            new Row("unit", "/$defs/unit", SkimmerUnit.class),
            new Row("unit", "/$defs/column", Column.class),
            new Row("unit", "/$defs/weir", Weir.class),
            new Row("unit", "/$defs/traits", FoamTraits.class),
            new Row("unit", "/$defs/target", Target.class),
            new Row("settings", "/$defs/settings", Settings.class),
            new Row("settings", "/$defs/condition", Condition.class),
            new Row("request", "", Request.class),
            new Row("options", "", ServiceOptions.class),
            new Row("options", "/properties/efforts", Efforts.class),
            new Row("answer", "", Advice.class),
            new Row("answer", "/$defs/diagnosis", Diagnosis.class),
            new Row("answer", "/$defs/causeShare", CauseShare.class),
            new Row("answer", "/$defs/expectation", Expectation.class),
            new Row("operating-point", "", OperatingPoint.class),
            new Row("warning", "", Warning.class),
            new Row("installation", "", Installation.class),
            new Row("installation", "/$defs/displayTank", DisplayTank.class),
            new Row("installation", "/$defs/overflow", Overflow.class),
            new Row("installation", "/$defs/drainage", Drainage.class),
            new Row("installation", "/$defs/plumbing", Plumbing.class),
            new Row("installation", "/$defs/filterBody", FilterBody.class),
            new Row("installation", "/$defs/extraSump", ExtraSump.class),
            new Row("installation", "/$defs/pumpCurve", PumpCurve.class),
            new Row("installation", "/$defs/pumpPoint", PumpPoint.class),
            new Row("installation", "/$defs/returnLine", ReturnLine.class),
            new Row("installation", "/$defs/skimmateHose", SkimmateHose.class),
            new Row("installation", "/$defs/stand", Stand.class),
            new Row("scenario", "/$defs/scenario", Scenario.class),
            new Row("scenario", "/$defs/scenarioTank", ScenarioTank.class),
            new Row("scenario", "/$defs/scenarioStart", ScenarioStart.class),
            new Row("scenario", "/$defs/scenarioEvent", ScenarioEvent.class),
            new Row("scenario", "/$defs/message", Message.class),
            new Row("scenario", "/$defs/hiddenFault", HiddenFault.class),
            new Row("scenario", "/$defs/offers", Offers.class),
            new Row("scenario", "/$defs/coaching", Coaching.class),
            new Row("scenario", "/$defs/question", Question.class),
            new Row("scenario", "/$defs/goals", Goals.class),
            new Row("scenario", "/$defs/limits", Limits.class),
            new Row("session", "", SessionRecord.class),
            new Row("session", "/$defs/sessionOptions", SessionOptions.class),
            new Row("session", "/$defs/prediction", Prediction.class));

    private static final List<Row> CHOICES = List.of(
            new Row("scenario", "/$defs/tankEvent", TankEvent.class),
            new Row("session", "/$defs/sessionStep", SessionStep.class),
            new Row("session", "/$defs/act", Act.class),
            new Row("answer", "/properties/step", Step.class),
            new Row("journal-entry", "", JournalEntry.class),
            new Row("journal-entry", "/$defs/observation", Observation.class));

    private static final List<Row> WORDS = List.of(
            new Row("scenario", "/$defs/scenarioTank/properties/parameters", TankParameter.class),
            new Row("scenario", "/$defs/offers/properties/looks", Look.class),
            new Row("scenario", "/$defs/offers/properties/acts", Act.Kind.class),
            new Row("scenario", "/$defs/offers/properties/services", Part.class),
            new Row("session", "/$defs/faultSheet/properties/shares", Cause.class),
            new Row("installation", "/$defs/fitting", Fitting.class),
            new Row("sentence", "/$defs/unit", Unit.class));

    private SchemaWriter() {}

    /** The schema as it should be. */
    static String text(String name) {
        ObjectNode schema = (ObjectNode) Fixtures.tree(Schemas.text(name));
        CHOICES.stream().filter(row -> row.schema().equals(name)).forEach(row -> choice(schema, row));
        RECORDS.stream()
                .filter(row -> row.schema().equals(name))
                .forEach(row -> members(schema, object(schema, row.pointer()), row.type()));
        WORDS.stream()
                .filter(row -> row.schema().equals(name))
                .forEach(row -> words(object(schema, row.pointer()), row.type()));
        return Laid.out(schema);
    }

    private static ObjectNode object(ObjectNode schema, String pointer) {
        return (ObjectNode) schema.at(pointer);
    }

    private static void choice(ObjectNode schema, Row row) {
        ObjectNode definitions = (ObjectNode) schema.get("$defs");
        ObjectNode place = row.pointer().isEmpty() ? schema : object(schema, row.pointer());
        Map<String, Class<?>> types = new LinkedHashMap<>();
        place.withArray("oneOf").forEach(each -> types.put(last(each.get("$ref").stringValue()), null));
        for (Class<?> each : row.type().getPermittedSubclasses()) {
            types.put(decapitalised(each.getSimpleName()), each);
        }
        types.values().removeIf(Objects::isNull);
        ArrayNode choices = NODES.arrayNode();
        types.forEach((name, each) -> {
            if (!definitions.has(name)) {
                ObjectNode made =
                        definitions.putObject(name).put("type", "object").put("description", UNDESCRIBED);
                made.putObject("properties").putObject("type").put("const", name);
                made.putArray("required").add("type");
                made.put("additionalProperties", false);
            }
            choices.addObject().put("$ref", "#/$defs/" + name);
            members(schema, (ObjectNode) definitions.get(name), each);
        });
        place.set("oneOf", choices);
    }

    private static String last(String reference) {
        return reference.substring(reference.lastIndexOf('/') + 1);
    }

    private static String decapitalised(String name) {
        return Character.toLowerCase(name.charAt(0)) + name.substring(1);
    }

    private static void members(ObjectNode schema, ObjectNode place, Class<?> type) {
        ObjectNode before = (ObjectNode) place.get("properties");
        Set<String> required = new HashSet<>();
        place.withArray("required").forEach(each -> required.add(each.stringValue()));
        Map<String, JsonNode> members = new LinkedHashMap<>();
        ArrayNode must = NODES.arrayNode();
        for (String extra : List.of("version", "type")) {
            keep(extra, before, required, members, must);
        }
        Map<String, Limit> limits = limits(type);
        for (RecordComponent each : type.getRecordComponents()) {
            ObjectNode member =
                    before.has(each.getName()) ? (ObjectNode) before.get(each.getName()) : fresh(each.getType());
            limit(member, limits.get(each.getName()));
            if (each.getType().isEnum()) {
                words(member.has("$ref") ? resolved(schema, member) : Optional.of(member), each.getType());
            }
            members.put(each.getName(), member);
            if (mustBeGiven(type, each)) {
                must.add(each.getName());
            }
        }
        for (String extra : List.of("id", "check", "library", "operation", "options", "recordAs")) {
            keep(extra, before, required, members, must);
        }
        ObjectNode properties = NODES.objectNode();
        members.forEach(properties::set);
        place.set("properties", properties);
        if (must.isEmpty()) {
            place.remove("required");
        } else {
            place.set("required", must);
        }
    }

    private static void keep(
            String name, ObjectNode before, Set<String> required, Map<String, JsonNode> members, ArrayNode must) {
        if (before.has(name) && !members.containsKey(name)) {
            members.put(name, before.get(name));
            if (required.contains(name)) {
                must.add(name);
            }
        }
    }

    private static ObjectNode fresh(Class<?> type) {
        ObjectNode member = NODES.objectNode();
        if (type == double.class || type == OptionalDouble.class) {
            member.put("type", "number");
        } else if (type == int.class) {
            member.put("type", "integer");
        } else if (type == boolean.class) {
            member.put("type", "boolean");
        } else if (type == String.class) {
            member.put("type", "string");
        }
        return member.put("description", UNDESCRIBED);
    }

    private static boolean mustBeGiven(Class<?> type, RecordComponent component) {
        return WhenMissing.of(type, component) == null;
    }

    /** The limits that the record's own constructor checks by. */
    private static Map<String, Limit> limits(Class<?> type) {
        Map<String, Limit> limits = new LinkedHashMap<>();
        for (Field field : type.getDeclaredFields()) {
            if (field.getType() == Limit.class && Modifier.isStatic(field.getModifiers())) {
                field.setAccessible(true);
                try {
                    Limit limit = (Limit) field.get(null);
                    limits.put(limit.name(), limit);
                } catch (IllegalAccessException e) {
                    throw new IllegalStateException(e);
                }
            }
        }
        return limits;
    }

    private static void limit(ObjectNode member, Limit limit) {
        boolean number = member.path("type").stringValue("").matches("number|integer");
        if (limit != null && number) {
            member.set("minimum", number(limit.low()));
            member.set("maximum", number(limit.high()));
        }
    }

    private static JsonNode number(double value) {
        return value == Math.rint(value) ? NODES.numberNode((long) value) : NODES.numberNode(value);
    }

    private static void words(Optional<ObjectNode> place, Class<?> type) {
        place.ifPresent(node -> words(node, type));
    }

    private static Optional<ObjectNode> resolved(ObjectNode schema, ObjectNode member) {
        String[] parts = member.get("$ref").stringValue().split("#", 2);
        return parts[0].isEmpty() ? Optional.of(object(schema, parts[1])) : Optional.empty();
    }

    /** Words as a list to choose from, or as the names of a table's members. */
    private static void words(ObjectNode place, Class<?> type) {
        List<String> names = Arrays.stream(type.getEnumConstants())
                .map(each -> ((Enum<?>) each).name())
                .toList();
        if (!place.has("properties")) {
            ArrayNode words = NODES.arrayNode();
            names.forEach(words::add);
            place.set("enum", words);
            return;
        }
        ObjectNode before = (ObjectNode) place.get("properties");
        JsonNode pattern = before.iterator().next();
        ObjectNode properties = NODES.objectNode();
        for (Object each : type.getEnumConstants()) {
            String name = ((Enum<?>) each).name();
            ObjectNode member = (ObjectNode) (before.has(name) ? before.get(name) : pattern.deepCopy());
            if (each instanceof TankParameter parameter) {
                member.set("minimum", number(parameter.limit().low()));
                member.set("maximum", number(parameter.limit().high()));
            }
            properties.set(name, member);
        }
        place.set("properties", properties);
    }
}
