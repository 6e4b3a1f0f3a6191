package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.weirwise.Weirwise;
import io.github.weirwise.advice.Advice;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.SkimmerUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class AnswerTest {
    private static final Instant NOW = Instant.parse("2026-03-03T09:00:00Z");

    @Test
    void theAnswerIsTheAdviceOfTheFrontDoor() {
        for (SkimmerUnit unit : FirstRoundUnits.units()) {
            Journal journal = Journal.of(Reading.of(
                    NOW.minusSeconds(600), new Observation.FunnelLevel(10), new Observation.CupVolume(30, 24, false)));
            Request request = new Request(unit, unit.ratedSettings(200), journal, NOW);
            String answer = WeirwiseJson.answer(WeirwiseJson.writeRequest(request));
            Advice expected = Weirwise.advise(unit, unit.ratedSettings(200), journal, NOW);
            assertThat(WeirwiseJson.readAdvice(answer)).isEqualTo(expected);
            assertThat(answer).doesNotContain("\n");
        }
    }

    @Test
    void everySentenceOfAnAnswerHasItsWords() {
        JsonNode answer = Fixtures.tree(WeirwiseJson.answer(Fixtures.text("request-whole.json")));
        int[] sentences = {0};
        walk(answer, node -> {
            if (node.has("key")) {
                assertThat(node.has("text")).as(node.toString()).isTrue();
                sentences[0]++;
            }
        });
        assertThat(sentences[0]).isGreaterThan(10);
        assertThat(answer.get("version").intValue()).isEqualTo(2);
    }

    /** {@code mvn -q -pl lib test -Dtest=AnswerTest -Danswers.rewrite=true} writes fixture and page anew. */
    @Test
    void theExampleInTheDocumentsIsTheRealAnswer() throws IOException {
        JsonNode answer = FourDigits.of(Fixtures.tree(WeirwiseJson.answer(Fixtures.text("request.json"))));
        if (Boolean.getBoolean("answers.rewrite")) {
            String text = Laid.out(answer);
            Files.writeString(Path.of("src/test/resources/io/github/weirwise/json/v2/answer.json"), text);
            Path page = Path.of("..", "docs", "formats.md");
            Files.writeString(
                    page,
                    Pattern.compile("(?s)(\n## Answer\n.*?```json\n).*?(```)")
                            .matcher(Files.readString(page))
                            .replaceFirst(found -> Matcher.quoteReplacement(found.group(1) + text + found.group(2))));
        }
        assertThat(FourDigits.of(Fixtures.tree(Fixtures.text("answer.json"))))
                .as("run with -Danswers.rewrite=true")
                .isEqualTo(answer);
    }

    @Test
    void aBadRequestGivesNoAnswer() {
        assertThatThrownBy(() -> WeirwiseJson.answer("{\"version\": 2}"))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("$.unit");
    }

    private static void walk(JsonNode node, java.util.function.Consumer<JsonNode> each) {
        each.accept(node);
        node.forEach(child -> walk(child, each));
    }
}
