package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import io.github.weirwise.advice.Advice;
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
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.exc.JsonNodeException;

/** The published schemas say the same as the readers, checked with a public validator. */
class SchemasTest {
    private static final String URN = "urn:weirwise:schema:1:";
    private static final SchemaRegistry REGISTRY = registry();

    static List<String> fixtures() {
        return Fixtures.VERSION_1;
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void everyFixtureIsValid(String name) {
        assertThat(schemaOf(name).validate(Fixtures.tree(Fixtures.text(name)))).isEmpty();
        String written = Fixtures.readAndWrite(name, Fixtures.text(name));
        assertThat(schemaOf(name).validate(Fixtures.tree(written))).isEmpty();
    }

    @Test
    void everyLineOfTheJournalFileIsValid() {
        List<String> lines = Fixtures.text("journal-file.jsonl").lines().toList();
        assertThat(schema("journal-header").validate(Fixtures.tree(lines.get(0))))
                .isEmpty();
        for (String line : lines.subList(1, lines.size())) {
            assertThat(schema("journal-entry").validate(Fixtures.tree(line))).isEmpty();
        }
    }

    @Test
    void adviceOfEveryKindIsValid() {
        for (Advice advice : SampleAdvice.all()) {
            assertThat(schema("answer").validate(Fixtures.tree(WeirwiseJson.writeAdvice(advice))))
                    .isEmpty();
        }
    }

    /** What the schema refuses the reader refuses too; the reader also knows limits between values, so not the reverse. */
    @ParameterizedTest
    @MethodSource("fixtures")
    void whatTheReaderAcceptsIsValid(String name) {
        DocumentMutator mutator = new DocumentMutator(name.hashCode());
        int accepted = 0;
        int refusedByBoth = 0;
        for (int i = 0; i < 300; i++) {
            String damaged = mutator.mutateTree(Fixtures.text(name));
            boolean valid = valid(name, damaged);
            boolean readable = readable(name, damaged);
            assertThat(valid || !readable)
                    .as("schema refuses, reader accepts %s", damaged)
                    .isTrue();
            accepted += readable ? 1 : 0;
            refusedByBoth += !readable && !valid ? 1 : 0;
        }
        assertThat(refusedByBoth).isGreaterThan(50);
        assertThat(accepted).isGreaterThan(name.equals("error.json") ? 0 : 5);
    }

    @Test
    void theSchemasKnowTheMembersAndWordsOfTheRecords() {
        check("unit", "/$defs/unit", SkimmerUnit.class);
        check("unit", "/$defs/column", Column.class);
        check("unit", "/$defs/weir", Weir.class);
        check("unit", "/$defs/traits", FoamTraits.class);
        check("unit", "/$defs/target", Target.class);
        check("settings", "/$defs/settings", Settings.class);
        check("settings", "/$defs/condition", Condition.class);
        check("request", "", Request.class);
        check("answer", "", Advice.class);
        check("answer", "/$defs/diagnosis", Diagnosis.class);
        check("answer", "/$defs/causeShare", CauseShare.class);
        check("answer", "/$defs/expectation", Expectation.class);
        check("operating-point", "", OperatingPoint.class);
        check("warning", "", Warning.class);
        check("installation", "", Installation.class);
        check("installation", "/$defs/displayTank", DisplayTank.class);
        check("installation", "/$defs/overflow", Overflow.class);
        check("installation", "/$defs/drainage", Drainage.class);
        check("installation", "/$defs/plumbing", Plumbing.class);
        check("installation", "/$defs/filterBody", FilterBody.class);
        check("installation", "/$defs/extraSump", ExtraSump.class);
        check("installation", "/$defs/pumpCurve", PumpCurve.class);
        check("installation", "/$defs/pumpPoint", PumpPoint.class);
        check("installation", "/$defs/returnLine", ReturnLine.class);
        check("installation", "/$defs/skimmateHose", SkimmateHose.class);
        check("installation", "/$defs/stand", Stand.class);
        assertThat(words(tree("installation").at("/$defs/fitting"))).isEqualTo(names(Fitting.class));
        check("scenario", "/$defs/scenario", Scenario.class);
        check("scenario", "/$defs/scenarioTank", ScenarioTank.class);
        check("scenario", "/$defs/scenarioStart", ScenarioStart.class);
        check("scenario", "/$defs/scenarioEvent", ScenarioEvent.class);
        check("scenario", "/$defs/message", Message.class);
        check("scenario", "/$defs/hiddenFault", HiddenFault.class);
        check("scenario", "/$defs/offers", Offers.class);
        check("scenario", "/$defs/coaching", Coaching.class);
        check("scenario", "/$defs/question", Question.class);
        check("scenario", "/$defs/goals", Goals.class);
        check("scenario", "/$defs/limits", Limits.class);
        check("session", "", SessionRecord.class);
        check("session", "/$defs/sessionOptions", SessionOptions.class);
        check("session", "/$defs/prediction", Prediction.class);
        checkTable("scenario", "/$defs/scenarioTank/properties/parameters", TankParameter.class);
        checkTable("scenario", "/$defs/offers/properties/looks", Look.class);
        checkTable("scenario", "/$defs/offers/properties/acts", Act.Kind.class);
        checkTable("scenario", "/$defs/offers/properties/services", Part.class);
        checkTable("session", "/$defs/faultSheet/properties/shares", Cause.class);
        checkChoice("scenario", TankEvent.class);
        checkChoice("session", SessionStep.class);
        checkChoice("session", Act.class);
        checkChoice("answer", Step.class);
        checkChoice("journal-entry", JournalEntry.class);
        checkChoice("journal-entry", Observation.class);
        assertThat(words(tree("sentence").at("/$defs/unit"))).isEqualTo(names(Unit.class));
    }

    @Test
    void anUnknownSchemaIsRefused() {
        assertThatThrownBy(() -> Schemas.text("../request")).isInstanceOf(IllegalArgumentException.class);
    }

    private static void checkTable(String schema, String pointer, Class<?> words) {
        Set<String> named =
                new TreeSet<>(tree(schema).at(pointer + "/properties").propertyNames());
        assertThat(named).as(pointer).isEqualTo(new TreeSet<>(names(words)));
    }

    @Test
    void everyBuiltInScenarioIsValid() {
        for (String name : ScenarioJson.BUILT_IN) {
            assertThat(schema("scenario").validate(Fixtures.tree(ScenarioJson.builtInText(name))))
                    .as(name)
                    .isEmpty();
        }
    }

    private static void checkChoice(String schema, Class<?> sealed) {
        for (Class<?> each : sealed.getPermittedSubclasses()) {
            String name = Character.toLowerCase(each.getSimpleName().charAt(0))
                    + each.getSimpleName().substring(1);
            assertThat(tree(schema)
                            .at("/$defs/" + name + "/properties/type/const")
                            .stringValue())
                    .isEqualTo(name);
            check(schema, "/$defs/" + name, each);
        }
    }

    private static void check(String schema, String pointer, Class<?> type) {
        JsonNode properties = tree(schema).at(pointer + "/properties");
        Set<String> expected = new TreeSet<>(properties.propertyNames());
        expected.removeAll(Set.of("version", "type", "id", "check"));
        Set<String> components = new TreeSet<>();
        for (RecordComponent each : type.getRecordComponents()) {
            components.add(each.getName());
            if (each.getType().isEnum()) {
                assertThat(words(resolved(schema, properties.get(each.getName()))))
                        .as("%s of %s", each.getName(), type)
                        .isEqualTo(names(each.getType()));
            }
        }
        assertThat(expected).as("%s%s", schema, pointer).isEqualTo(components);
    }

    private static JsonNode resolved(String schema, JsonNode node) {
        if (!node.has("$ref")) {
            return node;
        }
        String[] parts = node.get("$ref").stringValue().split("#", 2);
        String document = parts[0].isEmpty() ? schema : parts[0].substring(URN.length());
        return tree(document).at(parts[1]);
    }

    private static List<String> words(JsonNode node) {
        return node.get("enum").valueStream().map(JsonNode::stringValue).toList();
    }

    private static List<String> names(Class<?> type) {
        return Arrays.stream(type.getEnumConstants())
                .map(each -> ((Enum<?>) each).name())
                .toList();
    }

    /** The validator itself trips over whole numbers that are too large for it, which is a refusal. */
    private static boolean valid(String name, String text) {
        try {
            return schemaOf(name).validate(Fixtures.tree(text)).isEmpty();
        } catch (JsonNodeException e) {
            return false;
        }
    }

    private static boolean readable(String name, String text) {
        try {
            Fixtures.readAndWrite(name, text);
            return true;
        } catch (DocumentException e) {
            return false;
        }
    }

    private static Schema schemaOf(String fixture) {
        return schema(fixture.replace("-whole", "").replace(".json", ""));
    }

    private static Schema schema(String name) {
        return REGISTRY.getSchema(SchemaLocation.of(URN + name));
    }

    private static JsonNode tree(String name) {
        return Fixtures.tree(Schemas.text(name));
    }

    private static SchemaRegistry registry() {
        Map<String, String> schemas = new HashMap<>();
        Schemas.NAMES.forEach(name -> schemas.put(URN + name, Schemas.text(name)));
        return SchemaRegistry.withDefaultDialect(
                SpecificationVersion.DRAFT_2020_12,
                builder -> builder.schemas(schemas)
                        .schemaRegistryConfig(SchemaRegistryConfig.builder()
                                .formatAssertionsEnabled(true)
                                .build()));
    }
}
