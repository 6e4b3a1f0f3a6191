package io.github.weirwise.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every code block of the documents is of a kind that some test runs, compiles or checks. */
class CodeBlocksTest {
    private static final Pattern FENCE = Pattern.compile("(?ms)^```(\\w*)\\n(.*?)^```$");

    /**
     * Kinds of block and the pages where a test looks at them: Java everywhere (DocumentsTest), commands and XML everywhere
     * (here), the others where their page's own test runs or reads them (EmbeddingDocumentTest, FormatsDocumentTest) or a
     * command writes them (setup, advice) or QuotedAnswersTest compares them.
     */
    private static final Map<String, Set<String>> CHECKED = Map.of(
            "java", Set.of(),
            "", Set.of(),
            "xml", Set.of(),
            "sh", Set.of("docs/embedding.md"),
            "python", Set.of("docs/embedding.md"),
            "js", Set.of("docs/embedding.md"),
            "json", Set.of("docs/formats.md", "docs/service.md"),
            "jsonl", Set.of("docs/formats.md"),
            "text", Set.of("README.md", "docs/reference/setup.md", "docs/reference/advice.md"));

    private final List<Markdown> pages = Markdown.pages();

    @Test
    void noBlockEscapesTheTests() {
        List<String> unchecked = new ArrayList<>();
        for (Markdown page : pages) {
            Matcher block = FENCE.matcher(page.text());
            while (block.find()) {
                Set<String> where = CHECKED.get(block.group(1));
                if (where == null || !where.isEmpty() && !where.contains(page.name())) {
                    unchecked.add(page.name() + ": " + block.group(1) + " "
                            + block.group(2).lines().findFirst());
                }
            }
        }
        assertThat(unchecked).isEmpty();
    }

    /** Commands cost minutes, so here only what they name is checked: a known program, modules, profiles, files. */
    @Test
    void commandsNameWhatIsThere() throws IOException {
        String poms = Files.readString(Markdown.ROOT.resolve("pom.xml"))
                + Files.readString(Markdown.ROOT.resolve("lib/pom.xml"))
                + Files.readString(Markdown.ROOT.resolve("demo-ui/pom.xml"));
        List<String> wrong = new ArrayList<>();
        int commands = 0;
        for (Markdown page : pages) {
            for (String block : page.blocks("")) {
                for (String line : block.lines().toList()) {
                    commands++;
                    boolean fits = line.matches("(mvn|cp|java|xvfb-run|\\.ci/run)( .*)?")
                            && named(line, "-pl (\\S+)").stream().allMatch(this::isModule)
                            && named(line, "-f (\\S+)").stream().allMatch(this::isThere)
                            && named(line, "-P(\\S+)").stream()
                                    .allMatch(each -> poms.contains("<id>" + each + "</id>"));
                    if (!fits) {
                        wrong.add(page.name() + ": " + line);
                    }
                }
            }
        }
        assertThat(commands).isGreaterThan(3);
        assertThat(wrong).isEmpty();
    }

    @Test
    void theDependencyIsTheOneThatIsBuilt() throws IOException {
        String pom = Files.readString(Markdown.ROOT.resolve("lib/pom.xml"));
        List<String> blocks =
                pages.stream().flatMap(page -> page.blocks("xml").stream()).toList();
        assertThat(blocks).isNotEmpty().allSatisfy(block -> {
            for (String tag : List.of("groupId", "artifactId", "version")) {
                String value = named(block, "<" + tag + ">([^<]+)<").get(0);
                assertThat(pom).contains("<" + tag + ">" + value + "</" + tag + ">");
            }
        });
    }

    private static List<String> named(String text, String pattern) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map(each -> each.group(1))
                .toList();
    }

    private boolean isModule(String name) {
        return isThere(name + "/pom.xml");
    }

    private boolean isThere(String path) {
        return Files.exists(Markdown.ROOT.resolve(Path.of(path)));
    }
}
