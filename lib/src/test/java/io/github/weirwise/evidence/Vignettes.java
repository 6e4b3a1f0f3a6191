package io.github.weirwise.evidence;

import io.github.weirwise.json.WeirwiseJson;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads the cases of common practice from {@code vignettes.json}. */
final class Vignettes {
    private static final String FILE = "/io/github/weirwise/evidence/vignettes.json";
    private static final double ANY_MM = 50;

    private Vignettes() {}

    static List<Vignette> all() {
        try (InputStream in = Vignettes.class.getResourceAsStream(FILE)) {
            JsonNode cases = new JsonMapper().readTree(in.readAllBytes());
            List<Vignette> all = new ArrayList<>();
            cases.forEach(each -> all.add(vignette(each)));
            return List.copyOf(all);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Those that stand in the documents with the full text of the advice. */
    static List<Vignette> worked() {
        return all().stream().filter(each -> each.worked().isPresent()).toList();
    }

    private static Vignette vignette(JsonNode node) {
        return new Vignette(
                text(node, "name"),
                text(node, "title"),
                text(node, "seen"),
                text(node, "wouldDo"),
                text(node, "wouldNotDo"),
                text(node, "source"),
                optional(node, "worked"),
                patterns(node.get("allowed")),
                patterns(node.get("forbidden")),
                optional(node, "knownMiss"),
                WeirwiseJson.readRequest(node.get("request").toString()));
    }

    private static String text(JsonNode node, String name) {
        return optional(node, name).orElseThrow(() -> new IllegalStateException("a case has no " + name + ": " + node));
    }

    private static Optional<String> optional(JsonNode node, String name) {
        return Optional.ofNullable(node.get(name)).map(JsonNode::asString);
    }

    private static List<StepPattern> patterns(JsonNode nodes) {
        List<StepPattern> patterns = new ArrayList<>();
        for (JsonNode node : nodes) {
            Set<String> words = new HashSet<>();
            for (String list : List.of("parts", "at", "reasons")) {
                if (node.has(list)) {
                    node.get(list).forEach(word -> words.add(word.asString()));
                }
            }
            patterns.add(new StepPattern(
                    text(node, "step"), words, millimetres(node, "fromMm", 0), millimetres(node, "toMm", ANY_MM)));
        }
        return List.copyOf(patterns);
    }

    private static double millimetres(JsonNode node, String name, double otherwise) {
        return node.has(name) ? node.get(name).asDouble() : otherwise;
    }
}
