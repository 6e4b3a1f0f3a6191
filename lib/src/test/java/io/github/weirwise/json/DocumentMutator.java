package io.github.weirwise.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Damages documents in ways that people, programs and attackers do; the same seed gives the same damage. */
public final class DocumentMutator {
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final List<String> SNIPPETS = List.of(
            "NaN",
            "Infinity",
            "-Infinity",
            "1e999",
            "-0",
            "0",
            "1e-320",
            "0x10",
            "01",
            "+1",
            ".5",
            "5.",
            "1_000",
            "null",
            "true",
            "{}",
            "[]",
            "[[[[[[[[",
            "{\"a\":",
            "\"",
            "\\",
            "\\u0000",
            "\\ud800",
            "\\uZZZZ",
            "\u0000",
            "\uFEFF",
            "\u2028",
            "//",
            "/* */",
            "#",
            "'",
            ",",
            ":",
            "}",
            "]",
            "\"version\":2,",
            "\"version\":3,",
            "\"type\":\"note\",",
            "\"@class\":\"java.lang.Object\",",
            "99999999999999999999999999999999",
            "\"2026-13-45T99:99:99Z\"",
            "\"+999999999-12-31T23:59:59Z\"",
            "\uD83D\uDC1F",
            "\n");
    private static final double[] NUMBERS = {
        0,
        -0.0,
        1,
        -1,
        0.5,
        2,
        10,
        1e-9,
        1e9,
        -1e9,
        1e300,
        -1e300,
        Double.MIN_VALUE,
        Double.MAX_VALUE,
        1e-300,
        2147483648.0
    };

    private final Random random;

    /** A mutator with its own seed. */
    public DocumentMutator(long seed) {
        // Neighbouring seeds start a plain Random alike, so the first choices of thousands of documents would be the
        // same.
        this.random = new Random(new SplittableRandom(seed).nextLong());
    }

    /** The document with one to four pieces of damage. */
    public String mutate(String document, String other) {
        String damaged = document;
        int times = 1 + random.nextInt(4);
        for (int i = 0; i < times; i++) {
            damaged = random.nextBoolean() ? mutateText(damaged, other) : mutateTree(damaged);
        }
        return damaged;
    }

    /** Damage to the characters. */
    private String mutateText(String text, String other) {
        if (text.isEmpty()) {
            return other;
        }
        int from = random.nextInt(text.length());
        int to = Math.min(text.length(), from + 1 + random.nextInt(random.nextInt(10) == 0 ? text.length() : 12));
        String cut = text.substring(from, to);
        String before = text.substring(0, from);
        String after = text.substring(to);
        return switch (random.nextInt(8)) {
            case 0 -> before + after;
            case 1 -> before + cut + cut + after;
            case 2 -> before + snippet() + after;
            case 3 -> before + snippet() + cut + after;
            case 4 -> before;
            case 5 -> before + other.substring(Math.min(from, other.length()));
            case 6 -> before + (char) random.nextInt(random.nextBoolean() ? 128 : 0x10000) + after;
            default -> before + snippet().repeat(1 + random.nextInt(200)) + after;
        };
    }

    /** Damage to the tree, which leaves the document well-formed; text that is no tree any more stays as it is. */
    public String mutateTree(String text) {
        JsonNode root;
        try {
            root = MAPPER.readTree(text);
        } catch (RuntimeException notATree) {
            return text;
        }
        List<JsonNode> holders = new ArrayList<>();
        collect(root, holders);
        if (holders.isEmpty()) {
            return text;
        }
        JsonNode holder = holders.get(random.nextInt(holders.size()));
        if (holder instanceof ObjectNode object) {
            mutateObject(object, holders);
        } else if (holder instanceof ArrayNode array) {
            mutateArray(array, holders);
        }
        try {
            return MAPPER.writeValueAsString(root);
        } catch (RuntimeException | StackOverflowError tooDeep) {
            return text;
        }
    }

    private void mutateObject(ObjectNode object, List<JsonNode> all) {
        List<String> names = new ArrayList<>(object.propertyNames());
        if (names.isEmpty()) {
            object.put(word(), random.nextInt());
            return;
        }
        String name = names.get(random.nextInt(names.size()));
        JsonNode value = object.get(name);
        switch (random.nextInt(6)) {
            case 0 -> object.remove(name);
            case 1 -> object.set(mutateName(name), object.remove(name));
            case 2 -> object.set(word(), value.deepCopy());
            default -> object.set(name, replacement(value, all));
        }
    }

    private void mutateArray(ArrayNode array, List<JsonNode> all) {
        if (array.isEmpty()) {
            array.add(random.nextDouble());
            return;
        }
        int at = random.nextInt(array.size());
        switch (random.nextInt(4)) {
            case 0 -> array.remove(at);
            case 1 -> array.add(array.get(at).deepCopy());
            case 2 -> array.insert(at, all.get(random.nextInt(all.size())).deepCopy());
            default -> array.set(at, replacement(array.get(at), all));
        }
    }

    private JsonNode replacement(JsonNode value, List<JsonNode> all) {
        if (value.isNumber() && random.nextInt(3) > 0) {
            double scaled = value.doubleValue() * Math.pow(2, random.nextGaussian() * 2);
            return number(random.nextBoolean() ? scaled : NUMBERS[random.nextInt(NUMBERS.length)]);
        }
        return switch (random.nextInt(6)) {
            case 0 -> MAPPER.getNodeFactory().nullNode();
            case 1 -> MAPPER.getNodeFactory().booleanNode(random.nextBoolean());
            case 2 -> MAPPER.getNodeFactory().stringNode(word());
            case 3 -> number(random.nextInt(2000) - 500);
            case 4 -> MAPPER.createArrayNode().add(value.deepCopy());
            default -> all.get(random.nextInt(all.size())).deepCopy();
        };
    }

    private JsonNode number(double value) {
        return MAPPER.getNodeFactory().numberNode(Double.isFinite(value) ? value : 0);
    }

    private String mutateName(String name) {
        return switch (random.nextInt(4)) {
            case 0 -> name.replaceAll("Mm$", "Cm");
            case 1 -> name.toUpperCase(java.util.Locale.ROOT);
            case 2 -> name + snippet();
            default -> name.substring(random.nextInt(name.length() + 1));
        };
    }

    private String word() {
        return random.nextBoolean() ? snippet() : Integer.toString(random.nextInt(), 36);
    }

    private String snippet() {
        return SNIPPETS.get(random.nextInt(SNIPPETS.size()));
    }

    private static void collect(JsonNode node, List<JsonNode> holders) {
        if (node.isContainer()) {
            holders.add(node);
            node.forEach(child -> collect(child, holders));
        }
    }
}
