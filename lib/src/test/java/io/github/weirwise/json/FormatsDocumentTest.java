package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What docs/formats.md and docs/limits.md show is what the tests read and the code keeps to. */
class FormatsDocumentTest {
    private static final Path DOCS = Path.of("..", "docs");

    @Test
    void everyExampleIsAFixtureOfTheCurrentVersion() throws IOException {
        String document = Files.readString(DOCS.resolve("formats.md"));
        List<String> fixtures = new ArrayList<>(Fixtures.VERSION_2);
        fixtures.removeAll(List.of("request-whole.json", "session.json", "scenario-whole.json", "session-whole.json"));
        List<String> texts =
                new ArrayList<>(fixtures.stream().map(Fixtures::text).toList());
        texts.add(Fixtures.text("journal-file.jsonl"));
        List<String> shown = Pattern.compile("```jsonl?\\n(.*?)```", Pattern.DOTALL)
                .matcher(document)
                .results()
                .map(each -> each.group(1))
                .toList();
        assertThat(shown).containsExactlyInAnyOrderElementsOf(texts);
    }

    @Test
    void everyLookHasARowThatNamesItsObservation() throws IOException {
        String document = Files.readString(DOCS.resolve("formats.md"));
        Journal all = WeirwiseJson.readJournal(Fixtures.text("journal.json"));
        List<LookKind> seen = new ArrayList<>();
        for (Observation each : all.last(Reading.class).orElseThrow().observations()) {
            String name = each.getClass().getSimpleName();
            String type = name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
            for (LookKind kind : LookKind.values()) {
                if (kind.part().isEmpty() && kind.observations().contains(each.getClass())) {
                    seen.add(kind);
                    assertThat(document).containsPattern("\\| `" + kind + "` \\| .*`" + type + "`");
                }
            }
        }
        for (LookKind kind : LookKind.values()) {
            kind.part()
                    .ifPresentOrElse(
                            part -> assertThat(document)
                                    .contains("| `" + kind + "` | `inspection` of part `" + part + "` |"),
                            () -> assertThat(seen).contains(kind));
        }
    }

    @Test
    void everySchemaIsNamed() throws IOException {
        String document = Files.readString(DOCS.resolve("formats.md"));
        Schemas.NAMES.forEach(name -> assertThat(document).contains("`" + name + "`"));
    }

    @Test
    void theLimitsAreTheLimitsOfTheCode() throws IOException {
        String document = Files.readString(DOCS.resolve("limits.md"));
        assertThat(document)
                .contains("characters in a document | " + DocumentLimits.MOST_CHARACTERS)
                .contains("bytes in a line of the filter | " + LineFilter.LONGEST_LINE_BYTES)
                .contains("inside each other | " + DocumentLimits.DEEPEST_NESTING)
                .contains("characters in a text | " + DocumentLimits.LONGEST_TEXT)
                .contains("characters in a member name | " + DocumentLimits.LONGEST_NAME)
                .contains("characters in a number | " + DocumentLimits.LONGEST_NUMBER)
                .contains("in a request) | " + DocumentLimits.MOST_ELEMENTS)
                .contains("bytes in a line of a journal file | " + DocumentLimits.LONGEST_LINE_BYTES)
                .contains("bytes in a journal file | " + DocumentLimits.LARGEST_JOURNAL_FILE_BYTES)
                .contains(DocumentLimits.EARLIEST.toString().substring(0, 4) + " to "
                        + DocumentLimits.LATEST.minusSeconds(1).toString().substring(0, 4));
    }
}
