package io.github.weirwise.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Decisions stay short: a title, a date, and sentences that can be read once. */
class DecisionsTest {
    private static final int MOST_WORDS = 30;
    private final List<String> decisions = List.of(Markdown.of(Markdown.ROOT.resolve("docs/decisions.md"))
            .text()
            .replaceFirst("(?s)^.*?(?=\\*\\*)", "")
            .split("(?m)^(?=\\*\\*)"));

    @Test
    void everyDecisionHasATitleAndADate() {
        assertThat(decisions)
                .hasSizeGreaterThan(20)
                .allSatisfy(each -> assertThat(each)
                        .containsPattern("^\\*\\*[^*]+\\*\\*")
                        .containsPattern("\\(\\d{4}-\\d{2}-\\d{2}\\)"));
    }

    @Test
    void noSentenceHasMoreThanThirtyWords() {
        List<String> tooLong = new ArrayList<>();
        for (String each : decisions) {
            for (String sentence : each.replaceAll("\\s+", " ").split("(?<=[.!?:;])\\s|(?<=\\*\\*)\\s")) {
                if (sentence.strip().split(" ").length > MOST_WORDS) {
                    tooLong.add(sentence);
                }
            }
        }
        assertThat(tooLong).isEmpty();
    }
}
