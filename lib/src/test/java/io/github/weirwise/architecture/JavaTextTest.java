package io.github.weirwise.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The reader of sources, on which the tests of the texts stand. */
class JavaTextTest {
    private final JavaText text = new JavaText("""
            /** Phrase.of("in.comment") */
            class A {
                // Phrase.of("in.lineComment", 1)
                Phrase a = Phrase.of("a.one", mm(zs, 2), List.of(1, 2));
                Phrase b = Phrase.of("a.bracket", "x, (y", 'c');
                Phrase c = Phrase.of("a.part." + state.name());
            }
            """);

    @Test
    void argumentsAreSplitAtTheOuterCommasOnly() {
        assertThat(text.callsOf("Phrase\\.of"))
                .containsExactly(
                        List.of("\"a.one\"", "mm(zs, 2)", "List.of(1, 2)"),
                        List.of("\"a.bracket\"", "\"x, (y\"", "'c'"),
                        List.of("\"a.part.\" + state.name()"));
    }

    @Test
    void literalsAndWordsOfCommentsCountForNothing() {
        assertThat(text.literals()).containsExactly("a.bracket", "a.one", "a.part.", "x, (y");
        assertThat(text.words()).contains("state").doesNotContain("lineComment");
    }
}
