package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;

/**
 * Every request of docs/service.md is asked, and the answers below them are those that came.
 * {@code mvn -q -pl lib test -Dtest=ServiceDocumentTest -Danswers.rewrite=true} writes them anew.
 */
class ServiceDocumentTest {
    private static final Path PAGE = Path.of("..", "docs", "service.md");
    private static final Pattern PAIR = Pattern.compile("(?s)(```json\\n)(.*?)(```\\n.*?```json\\n)(.*?)(```)");

    private record Example(String request, String answer) {}

    private static List<Example> examples() throws IOException {
        List<Example> examples = new ArrayList<>();
        Matcher pair = PAIR.matcher(Files.readString(PAGE));
        while (pair.find()) {
            examples.add(new Example(pair.group(2), pair.group(4)));
        }
        assertThat(examples).hasSizeGreaterThan(4);
        return examples;
    }

    private static JsonNode answer(String request) {
        JsonNode answer = FourDigits.of(Fixtures.tree(WeirwiseJson.answer(request)));
        if (answer.at("/state/data") instanceof ArrayNode data) {
            // What was kept is far too long for a page.
            data.removeAll().add("...");
        }
        return answer;
    }

    @Test
    void everyAnswerOfThePageIsWhatComes() throws IOException {
        if (Boolean.getBoolean("answers.rewrite")) {
            String page = PAIR.matcher(Files.readString(PAGE))
                    .replaceAll(found -> Matcher.quoteReplacement(found.group(1) + found.group(2) + found.group(3)
                            + Laid.out(answer(found.group(2))) + "```"));
            Files.writeString(PAGE, page);
        }
        for (Example each : examples()) {
            assertThat(each.answer()).as("run with -Danswers.rewrite=true").isEqualTo(Laid.out(answer(each.request())));
        }
    }

    @Test
    void requestsAndAnswersAreValid() throws IOException {
        for (Example each : examples()) {
            JsonNode request = Fixtures.tree(each.request());
            assertThat(SchemasTest.schema("service-request").validate(request)).isEmpty();
            assertThat(SchemasTest.schema("service-answer")
                            .validate(Fixtures.tree(WeirwiseJson.answer(each.request()))))
                    .isEmpty();
        }
    }

    /** The same through the filter, all in one process, a bad line between each two. */
    @Test
    void theFilterGivesTheSameAnswers() throws IOException {
        StringBuilder lines = new StringBuilder();
        List<String> expected = new ArrayList<>();
        for (Example each : examples()) {
            lines.append(each.request().replace("\n", ""))
                    .append("\n{\"version\": 2, \"id\": \"bad\", \"operation\": \"dance\"}\n");
            expected.add(WeirwiseJson.answer(each.request()));
            expected.add(WeirwiseJson.reply("{\"version\": 2, \"id\": \"bad\", \"operation\": \"dance\"}"));
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        LineFilter.filter(new ByteArrayInputStream(lines.toString().getBytes(StandardCharsets.UTF_8)), out);
        assertThat(out.toString(StandardCharsets.UTF_8).lines()).containsExactlyElementsOf(expected);
    }
}
