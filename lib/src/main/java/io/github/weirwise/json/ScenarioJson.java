package io.github.weirwise.json;

import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.SessionRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Scenarios and sessions as documents, and the scenarios that come with the library. Stateless and thread-safe.
 *
 * <p>Every {@code read} method throws {@link DocumentException} and nothing else when the text is not such a document.
 *
 * <p>Practice is not exported: this is for our own demo and for programs that put the library on the class path.
 *
 * @since 0.1
 */
@SuppressWarnings("exports")
public final class ScenarioJson {
    /** Names of the built-in scenarios, easiest first. */
    public static final List<String> BUILT_IN = List.of(
            "first-steps",
            "after-the-feast",
            "dark-morning",
            "dirty-neck",
            "slow-drying",
            "first-start",
            "weak-return",
            "slipped-weir",
            "opened-valve",
            "growing-load",
            "missing-wrasse",
            "old-tang",
            "drowned-weir",
            "nobody-washed",
            "pale-flood",
            "fresh-top-off",
            "leave-it",
            "weekend-rhythm",
            "two-faults",
            "deep-media",
            "creeping-scale",
            "quarter-year");

    private static final Shapes SHAPES = new Shapes();
    private static final Document<Scenario> SCENARIO = new Document<>(SHAPES.of(Scenario.class));
    private static final Document<SessionRecord> SESSION = new Document<>(SHAPES.of(SessionRecord.class));

    private ScenarioJson() {}

    /** Reads a scenario. */
    public static Scenario readScenario(String document) {
        return SCENARIO.read(document);
    }

    /** Writes a scenario, with every member that may be left out. */
    public static String writeScenario(Scenario scenario) {
        return SCENARIO.write(scenario);
    }

    /** Reads the record of a session. */
    public static SessionRecord readSession(String document) {
        return SESSION.read(document);
    }

    /** Writes the record of a session. */
    public static String writeSession(SessionRecord session) {
        return SESSION.write(session);
    }

    /**
     * A built-in scenario.
     *
     * @param name one of {@link #BUILT_IN}
     * @throws IllegalArgumentException if it is not
     */
    public static Scenario builtIn(String name) {
        return readScenario(builtInText(name));
    }

    /**
     * The document of a built-in scenario, to copy and change.
     *
     * @param name one of {@link #BUILT_IN}
     * @throws IllegalArgumentException if it is not
     */
    public static String builtInText(String name) {
        if (!BUILT_IN.contains(name)) {
            throw new IllegalArgumentException(
                    "no scenario " + Quote.of(name) + "; use one of " + String.join(", ", BUILT_IN));
        }
        try (InputStream in = Scenario.class.getResourceAsStream("scenarios/" + name + ".json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the jar is damaged", e);
        }
    }
}
