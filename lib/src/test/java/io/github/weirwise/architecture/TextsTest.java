package io.github.weirwise.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** What people read: every text that the code asks for is there, every text that is there is asked for, in every language. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TextsTest {
    private static final Pattern PLACE = Pattern.compile("\\{(\\d+)}");
    private static final Pattern WHOLE_LITERAL = Pattern.compile("\"([^\"]*)\"");
    private static final String[] RESOURCES = {"lib/src/main/resources", "demo-ui/src/main/resources"};

    private final Map<String, String> english = englishTexts();
    private final List<JavaText> sources = Library.javaFiles("lib/src/main/java", "demo-ui/src/main/java").stream()
            .map(file -> new JavaText(Library.read(file)))
            .toList();

    @Test
    void everyTextThatIsAskedForIsThere() {
        Set<String> missing = new TreeSet<>();
        for (List<String> call : calls()) {
            String key = call.get(0);
            if (!key.contains("+")) {
                missing.addAll(new JavaText(key).literals());
            }
        }
        assertThat(missing).hasSizeGreaterThan(8);
        missing.removeAll(english.keySet());
        assertThat(missing).isEmpty();
    }

    @Test
    void everyTextIsGivenTheValuesThatItHasPlacesFor() {
        List<String> wrong = new ArrayList<>();
        for (List<String> call : calls()) {
            Matcher key = WHOLE_LITERAL.matcher(call.get(0));
            boolean known = key.matches() && english.containsKey(key.group(1));
            if (known && !takes(call, places(english.get(key.group(1))))) {
                wrong.add(String.join(", ", call) + " does not fit: " + english.get(key.group(1)));
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void everyTextIsAskedFor() {
        Set<String> literals = new TreeSet<>();
        Set<String> words = new TreeSet<>();
        sources.forEach(source -> {
            literals.addAll(source.literals());
            words.addAll(source.words());
        });
        Set<String> unused = new TreeSet<>(english.keySet());
        unused.removeIf(key -> literals.contains(key) || isComposed(key, literals, words) || isCounted(key, literals));
        assertThat(unused).isEmpty();
    }

    @Test
    void everyConstantThatHasWordsCanSayThem() throws ReflectiveOperationException {
        int said = 0;
        for (JavaClass type : Library.classes()) {
            if (type.isEnum()) {
                said += sayAll(Class.forName(type.getName()));
            }
        }
        assertThat(said).isGreaterThan(4);
    }

    @Test
    void everyPatternIsWellFormed() {
        List<String> wrong = new ArrayList<>();
        english.forEach((key, pattern) -> {
            boolean apostrophe = pattern.replace("''", "").contains("'");
            boolean braces = PLACE.matcher(pattern).replaceAll("").matches("(?s).*[{}].*");
            if (pattern.isBlank() || apostrophe || braces || !places(pattern).equals(firstPlaces(pattern))) {
                wrong.add(key + "=" + pattern);
            }
        });
        assertThat(english).hasSizeGreaterThan(10);
        assertThat(wrong).isEmpty();
    }

    @Test
    void everyTextLivesOnTheFloorThatItsKeyNames() {
        List<String> wrong = new ArrayList<>();
        for (Path file : Library.files("texts.properties", RESOURCES)) {
            String floor = file.getParent().getFileName().toString();
            read(file).keySet().stream()
                    .filter(key -> !key.startsWith(floor + "."))
                    .forEach(key -> wrong.add(key + " in the texts of " + floor));
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void everyLanguageHasTheSameTextsWithTheSamePlaces() {
        List<String> wrong = new ArrayList<>();
        for (Path file : Library.files(".properties", RESOURCES)) {
            if (file.getFileName().toString().startsWith("texts_")) {
                Map<String, String> original = read(file.resolveSibling("texts.properties"));
                Map<String, String> other = read(file);
                original.forEach((key, pattern) -> {
                    if (!other.containsKey(key) || !places(other.get(key)).equals(places(pattern))) {
                        wrong.add(file.getFileName() + ": " + key);
                    }
                });
                other.keySet().stream()
                        .filter(key -> !original.containsKey(key))
                        .forEach(key -> wrong.add(file.getFileName() + ": " + key + " has no original"));
            }
        }
        assertThat(wrong).isEmpty();
    }

    private List<List<String>> calls() {
        return sources.stream()
                .flatMap(source -> Stream.concat(
                        source.callsOf("Phrase\\.of").stream(),
                        source.callsOf("Warning\\.(?:note|caution|danger)").stream()))
                .filter(call -> !call.get(0).isEmpty())
                .toList();
    }

    /** A spread array or a stream may hold any number, so a single value that is no plain call is trusted. */
    private static boolean takes(List<String> call, Set<Integer> places) {
        int given = call.size() - 1;
        boolean spread = given == 1 && call.get(1).matches("values|arguments|.*\\.toArray\\(.*|new Object\\[].*");
        return spread || given == places.size();
    }

    /** One or several of a thing that a {@code Count} names. */
    private static boolean isCounted(String key, Set<String> literals) {
        return key.matches(".*\\.(one|other)") && literals.contains(key.substring(0, key.lastIndexOf('.')));
    }

    /** Whether the key is put together: a literal that ends with a dot, then a literal or a name from the code. */
    private static boolean isComposed(String key, Set<String> literals, Set<String> words) {
        for (int dot = key.indexOf('.'); dot > 0; dot = key.indexOf('.', dot + 1)) {
            String rest = key.substring(dot + 1);
            if (literals.contains(key.substring(0, dot + 1))
                    && (literals.contains(rest) || words.contains(rest) || isComposed(rest, literals, words))) {
                return true;
            }
        }
        return false;
    }

    /** Asks every constant of an enum for each phrase that it offers without an argument, and says it. */
    private static int sayAll(Class<?> type) throws ReflectiveOperationException {
        int said = 0;
        for (Method method : type.getDeclaredMethods()) {
            if (givesWords(method)) {
                method.setAccessible(true);
                for (Object constant : type.getEnumConstants()) {
                    String words = PhraseBook.ENGLISH_METRIC.say((Phrase) method.invoke(constant));
                    assertThat(words).as("%s of %s", method.getName(), constant).isNotBlank();
                    said++;
                }
            }
        }
        return said;
    }

    private static boolean givesWords(Method method) {
        boolean words = method.getReturnType() == Phrase.class && method.getParameterCount() == 0;
        return words && !Modifier.isStatic(method.getModifiers());
    }

    private static Set<Integer> places(String pattern) {
        Set<Integer> places = new TreeSet<>();
        Matcher matcher = PLACE.matcher(pattern);
        while (matcher.find()) {
            places.add(Integer.valueOf(matcher.group(1)));
        }
        return places;
    }

    private static Set<Integer> firstPlaces(String pattern) {
        Set<Integer> first = new TreeSet<>();
        for (int i = 0; i < places(pattern).size(); i++) {
            first.add(i);
        }
        return first;
    }

    private static Map<String, String> englishTexts() {
        Map<String, String> texts = new TreeMap<>();
        Library.files("texts.properties", RESOURCES).forEach(file -> texts.putAll(read(file)));
        return texts;
    }

    private static Map<String, String> read(Path file) {
        Properties properties = new Properties();
        try (Reader reader = Files.newBufferedReader(file)) {
            properties.load(reader);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Map<String, String> texts = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> texts.put(key, properties.getProperty(key)));
        return texts;
    }
}
