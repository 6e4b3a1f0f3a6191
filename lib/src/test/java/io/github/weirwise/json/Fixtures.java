package io.github.weirwise.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The documents of each released version of the format, kept for ever. */
final class Fixtures {
    static final List<String> VERSION_2 = List.of(
            "request.json",
            "request-whole.json",
            "answer.json",
            "unit.json",
            "settings.json",
            "journal.json",
            "operating-point.json",
            "installation.json",
            "error.json",
            "scenario.json",
            "session.json",
            "scenario-whole.json",
            "session-whole.json");

    private static final JsonMapper MAPPER = new JsonMapper();

    private static final Map<String, String> TEXTS = new ConcurrentHashMap<>();

    private Fixtures() {}

    static String text(String name) {
        return TEXTS.computeIfAbsent(name, Fixtures::load);
    }

    private static String load(String name) {
        try (InputStream in = Fixtures.class.getResourceAsStream("v2/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static JsonNode tree(String text) {
        return MAPPER.readTree(text);
    }

    /** Reads a document of the kind that the fixture's name tells, and writes it again. */
    static String readAndWrite(String name, String text) {
        return switch (name) {
            case "request.json", "request-whole.json" -> WeirwiseJson.writeRequest(WeirwiseJson.readRequest(text));
            case "answer.json" -> WeirwiseJson.writeAdvice(WeirwiseJson.readAdvice(text));
            case "unit.json" -> WeirwiseJson.writeUnit(WeirwiseJson.readUnit(text));
            case "settings.json" -> WeirwiseJson.writeSettings(WeirwiseJson.readSettings(text));
            case "journal.json" -> WeirwiseJson.writeJournal(WeirwiseJson.readJournal(text));
            case "operating-point.json" -> WeirwiseJson.writeOperatingPoint(WeirwiseJson.readOperatingPoint(text));
            case "installation.json" -> WeirwiseJson.writeInstallation(WeirwiseJson.readInstallation(text));
            case "error.json" -> WeirwiseJson.writeError(WeirwiseJson.readError(text));
            case "scenario.json", "scenario-whole.json" -> ScenarioJson.writeScenario(ScenarioJson.readScenario(text));
            case "session.json", "session-whole.json" -> ScenarioJson.writeSession(ScenarioJson.readSession(text));
            default -> throw new IllegalArgumentException(name);
        };
    }
}
