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
import java.time.Instant;
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
        assertThat(answer.get("version").intValue()).isEqualTo(1);
    }

    @Test
    void aBadRequestGivesNoAnswer() {
        assertThatThrownBy(() -> WeirwiseJson.answer("{\"version\": 1}"))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("$.unit");
    }

    private static void walk(JsonNode node, java.util.function.Consumer<JsonNode> each) {
        each.accept(node);
        node.forEach(child -> walk(child, each));
    }
}
