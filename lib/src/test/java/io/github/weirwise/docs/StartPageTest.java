package io.github.weirwise.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Whoever begins at docs/start.md finds every page. */
class StartPageTest {
    @Test
    void everyPageOfTheDocumentsIsInTheList() {
        List<String> listed =
                Markdown.of(Markdown.ROOT.resolve("docs/start.md")).links();
        List<String> missing = Markdown.pages().stream()
                .map(Markdown::name)
                .filter(name -> name.matches("docs/(reference/)?[^/]+\\.md") && !name.equals("docs/start.md"))
                .map(name -> name.substring("docs/".length()))
                .filter(name -> !listed.contains(name))
                .toList();
        assertThat(listed).hasSizeGreaterThan(10);
        assertThat(missing).isEmpty();
    }
}
