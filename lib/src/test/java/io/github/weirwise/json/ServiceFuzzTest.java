package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Lines of a grammar in one process: each gives an answer or an error in our own words, and the same line later the same answer. */
class ServiceFuzzTest {
    /** More by hand: {@code -Dservice.lines=100000}. */
    private static final int LINES = Integer.getInteger("service.lines", 600);

    @Test
    void everyLineGetsAnAnswerOrAnErrorOfOurOwnAndHarmsNoOther() {
        ServiceGrammar grammar = new ServiceGrammar(11);
        String probe = Fixtures.text("request.json");
        String expected = WeirwiseJson.reply(probe);
        int answered = 0;
        for (int i = 0; i < LINES; i++) {
            String line = grammar.line();
            try {
                JsonNode answer = Fixtures.tree(WeirwiseJson.answer(line));
                grammar.answered(answer);
                answered++;
            } catch (DocumentException e) {
                assertThat(OwnWords.says(e)).as("%s to %s", e, line).isTrue();
            }
            if (i % 50 == 0) {
                assertThat(WeirwiseJson.reply(probe)).as("after %s", line).isEqualTo(expected);
            }
        }
        assertThat(answered).as("legal ones").isGreaterThan(LINES / 6);
    }

    /** What fuzzing found once is tried for ever. */
    @Test
    void theCorpusGivesErrorsOfOurOwn() throws IOException {
        for (String line : Files.readAllLines(Path.of("src/test/resources/io/github/weirwise/json/corpus.jsonl"))) {
            try {
                WeirwiseJson.answer(line);
            } catch (DocumentException e) {
                assertThat(OwnWords.says(e)).as("%s to %s", e, line).isTrue();
            }
        }
    }
}
