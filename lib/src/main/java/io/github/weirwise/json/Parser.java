package io.github.weirwise.json;

import java.util.ArrayDeque;
import java.util.Deque;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamContext;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Text to tree and back by RFC 8259, no more: no comments, no NaN, no second member of the same name, nothing after the end. */
final class Parser {
    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxDocumentLength(DocumentLimits.MOST_CHARACTERS)
                            .maxNestingDepth(DocumentLimits.DEEPEST_NESTING)
                            .maxStringLength(DocumentLimits.LONGEST_TEXT)
                            .maxNameLength(DocumentLimits.LONGEST_NAME)
                            .maxNumberLength(DocumentLimits.LONGEST_NUMBER)
                            .build())
                    .build())
            .disable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS) // checked here, with its place
            .build();

    private Parser() {}

    /** The document as a tree. */
    static Place parse(String text) {
        checkSize(text);
        try (JsonParser parser = MAPPER.createParser(text)) {
            return parse(parser);
        }
    }

    static String print(JsonNode node) {
        return MAPPER.writeValueAsString(node);
    }

    private static void checkSize(String text) {
        if (text == null || text.isBlank()) {
            throw new DocumentException("$", "the document is empty", "give a JSON object");
        }
        if (text.length() > DocumentLimits.MOST_CHARACTERS) {
            throw new DocumentException(
                    "$",
                    "the document has " + text.length() + " characters, may have " + DocumentLimits.MOST_CHARACTERS,
                    "send fewer journal entries");
        }
    }

    private static Place parse(JsonParser parser) {
        try {
            JsonNode tree = MAPPER.readTree(parser);
            checkEnd(parser);
            return Place.root(tree);
        } catch (StreamConstraintsException e) {
            throw new DocumentException(pathOf(parser), firstLine(e), "keep within the limits of documents", e);
        } catch (JacksonException e) {
            throw new DocumentException(
                    pathOf(parser),
                    "is not JSON at " + where(e) + ": " + firstLine(e),
                    "write plain JSON (RFC 8259), every name once, numbers as digits",
                    e);
        }
    }

    private static void checkEnd(JsonParser parser) {
        boolean ended;
        try {
            ended = parser.nextToken() == null;
        } catch (JacksonException noToken) {
            ended = false;
        }
        if (!ended) {
            throw new DocumentException("$", "there is text after the end of the document", "send one object alone");
        }
    }

    private static String where(JacksonException e) {
        return "line " + e.getLocation().getLineNr() + ", column "
                + e.getLocation().getColumnNr();
    }

    private static String firstLine(JacksonException e) {
        return Quote.plain(e.getOriginalMessage().lines().findFirst().orElse("unreadable"), 200);
    }

    private static String pathOf(JsonParser parser) {
        Deque<String> steps = new ArrayDeque<>();
        for (TokenStreamContext at = parser.streamReadContext(); at != null && !at.inRoot(); at = at.getParent()) {
            if (at.inObject() && at.currentName() != null) {
                steps.push(Place.memberStep(at.currentName()));
            } else if (at.inArray() && at.hasCurrentIndex()) {
                steps.push(Place.elementStep(at.getCurrentIndex()));
            }
        }
        return "$" + String.join("", steps);
    }
}
