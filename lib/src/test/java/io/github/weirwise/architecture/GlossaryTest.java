package io.github.weirwise.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** One word for one thing: what docs/glossary.md says not to say stands in no text that a person reads. */
class GlossaryTest {

    private static final String[] RESOURCES = {"lib/src/main/resources", "demo-ui/src/main/resources"};

    private final List<String[]> rows = rows();
    private final Map<String, String> banned = bannedWords();

    @Test
    void theGlossaryHasTheWordsOfTheTrade() {
        List<String> words =
                rows.stream().filter(row -> row.length == 3).map(row -> row[0]).toList();
        assertThat(words)
                .hasSizeBetween(55, 85)
                .doesNotHaveDuplicates()
                .contains(
                        "weir", "crest", "skimmate", "wet", "dry", "creamy", "microbubbles", "RCD (GFCI)", "break-in");
    }

    @Test
    void noTextUsesAnotherWordForTheSameThing() {
        List<String> wrong = new ArrayList<>();
        Map<String, Pattern> patterns = new TreeMap<>();
        banned.keySet().forEach(word -> patterns.put(word, pattern(word)));
        texts().forEach((key, text) -> banned.forEach((word, instead) -> {
            if (patterns.get(word).matcher(text).find()) {
                wrong.add(key + ": \"" + word + "\", say " + instead + ": " + text);
            }
        }));
        assertThat(wrong).isEmpty();
    }

    @Test
    void noBannedWordIsAWordOfTheGlossary() {
        for (String[] row : rows) {
            assertThat(banned.keySet()).doesNotContain(row[0].toLowerCase(Locale.ROOT));
        }
    }

    /** A number in a text is a limit or a hint and written as the rounding rule writes it. */
    @Test
    void noTextHoldsANumberWithATrailingZeroOrWithoutASpaceBeforeItsUnit() {
        List<String> wrong = new ArrayList<>();
        texts().forEach((key, text) -> {
            if (text.matches("(?s).*\\d\\.\\d*0\\b.*") || text.matches("(?s).*\\d(%|mm|mL|L/h|h)\\b.*|.*\\d%.*")) {
                wrong.add(key + ": " + text);
            }
        });
        assertThat(wrong).isEmpty();
    }

    @Test
    void aBannedWordIsFoundWhereverItStands() {
        assertThat(says("Is the darkness wanted?", "wanted")).isTrue();
        assertThat(says("unwanted", "wanted")).isFalse();
        assertThat(says("Mind: the step", "mind:")).isTrue();
    }

    private static boolean says(String text, String word) {
        return pattern(word).matcher(text).find();
    }

    private static Pattern pattern(String word) {
        String edge = Character.isLetterOrDigit(word.charAt(word.length() - 1)) ? "(?![A-Za-z])" : "";
        return Pattern.compile("(?<![A-Za-z-])" + Pattern.quote(word) + edge, Pattern.CASE_INSENSITIVE);
    }

    private Map<String, String> bannedWords() {
        Map<String, String> banned = new TreeMap<>();
        for (String[] row : rows) {
            for (String word : row[row.length - 1].split(",\\s*")) {
                banned.put(word.strip().toLowerCase(Locale.ROOT), row[0]);
            }
        }
        return banned;
    }

    private static List<String[]> rows() {
        return Library.read(Library.root().resolve("docs/glossary.md"))
                .lines()
                .filter(line -> line.startsWith("| ") && !line.matches(".*\\| not \\|"))
                .map(line -> Arrays.stream(
                                line.substring(1, line.lastIndexOf('|')).split("\\|"))
                        .map(String::strip)
                        .toArray(String[]::new))
                .toList();
    }

    private static Map<String, String> texts() {
        Map<String, String> texts = new TreeMap<>();
        for (Path file : new TreeSet<>(Library.files("texts.properties", RESOURCES))) {
            Properties properties = new Properties();
            try (Reader reader = Files.newBufferedReader(file)) {
                properties.load(reader);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            properties.stringPropertyNames().forEach(key -> texts.put(key, properties.getProperty(key)));
        }
        return texts;
    }
}
