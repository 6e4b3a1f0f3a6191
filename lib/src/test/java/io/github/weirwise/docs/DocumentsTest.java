package io.github.weirwise.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The documents keep their word: links lead somewhere, and Java in them compiles. */
class DocumentsTest {
    private final List<Markdown> pages = Markdown.pages();

    @TempDir
    private Path folder;

    @Test
    void everyRelativeLinkLeadsSomewhere() {
        List<String> dead = new ArrayList<>();
        int followed = 0;
        for (Markdown page : pages) {
            for (String link : page.links()) {
                if (!link.matches("(?i)[a-z][a-z0-9+.-]*:.*")) {
                    followed++;
                    if (!leadsSomewhere(page, link)) {
                        dead.add(page.name() + " -> " + link);
                    }
                }
            }
        }
        assertThat(followed).isGreaterThan(3);
        assertThat(dead).isEmpty();
    }

    /** What no page shows is left over, and goes stale unseen. */
    @Test
    void everyPictureAndExampleIsNamedByAPage() throws IOException {
        String all = pages.stream().map(Markdown::text).collect(Collectors.joining());
        for (String folder : List.of("docs/pictures", "docs/examples")) {
            try (Stream<Path> files = Files.list(Markdown.ROOT.resolve(folder))) {
                assertThat(files.filter(Files::isRegularFile))
                        .allSatisfy(file ->
                                assertThat(all).contains(file.getFileName().toString()));
            }
        }
    }

    @Test
    void everyJavaBlockCompiles() throws IOException {
        List<String> complaints = new ArrayList<>();
        int compiled = 0;
        for (Markdown page : pages) {
            for (String block : page.blocks("java")) {
                Path own = Files.createDirectory(folder.resolve("block" + compiled++));
                String said = new JavaExample(block).compile(own);
                if (!said.isEmpty()) {
                    complaints.add(page.name() + ": " + said);
                }
            }
        }
        assertThat(complaints).isEmpty();
    }

    private static boolean leadsSomewhere(Markdown page, String link) {
        Path target = target(page.file(), link);
        int hash = link.indexOf('#');
        if (hash < 0 || !target.toString().endsWith(".md")) {
            return Files.exists(target);
        }
        return Files.exists(target) && Markdown.of(target).anchors().contains(link.substring(hash + 1));
    }

    private static Path target(Path from, String link) {
        String path = link.replaceAll("#.*", "");
        boolean elsewhere = link.matches("(?i)[a-z][a-z0-9+.-]*:.*");
        return path.isEmpty() || elsewhere ? from : from.resolveSibling(path).normalize();
    }
}
