package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import io.github.weirwise.advice.Advice;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.exc.JsonNodeException;

/** The published schemas say the same as the readers, checked with a public validator. */
class SchemasTest {
    private static final String URN = "urn:weirwise:schema:2:";
    private static final SchemaRegistry REGISTRY = registry();

    static List<String> fixtures() {
        return Fixtures.VERSION_2;
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

    /** Members, limits and words come from the records; {@code -Dschemas.rewrite=true} writes what is new. */
    @ParameterizedTest
    @MethodSource("names")
    void everySchemaIsWhatTheRecordsSay(String name) throws IOException {
        String current = SchemaWriter.text(name);
        if (!current.equals(Schemas.text(name)) && Boolean.getBoolean("schemas.rewrite")) {
            Files.writeString(Path.of("src/main/resources/io/github/weirwise/json/schema", name + ".json"), current);
        }
        assertThat(Schemas.text(name)).isEqualTo(current);
        assertThat(current).as("every member is described").doesNotContain(SchemaWriter.UNDESCRIBED);
    }

    static List<String> names() {
        return Schemas.NAMES;
    }

    @Test
    void anUnknownSchemaIsRefused() {
        assertThatThrownBy(() -> Schemas.text("../request")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void everyBuiltInScenarioIsValid() {
        for (String name : ScenarioJson.BUILT_IN) {
            assertThat(schema("scenario").validate(Fixtures.tree(ScenarioJson.builtInText(name))))
                    .as(name)
                    .isEmpty();
        }
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

    static Schema schema(String name) {
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
