package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import java.util.ArrayDeque;
import java.util.Deque;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.TokenStreamContext;
import tools.jackson.databind.JsonNode;

/** Text to tree by RFC 8259, no more: no comments, no NaN, no second member of the same name, nothing after the end. */
final class Parser {
    private Parser() {}

    /** The document as a tree. */
    static Place parse(String text) {
        checkSize(text);
        try (JsonParser parser = Tree.parser(text)) {
            return parse(parser, text);
        }
    }

    private static void checkSize(String text) {
        if (text == null || text.isBlank()) {
            throw new DocumentException("$", Phrase.of("json.documentEmpty"), Phrase.of("json.giveJsonObject"));
        }
        if (text.length() > DocumentLimits.MOST_CHARACTERS) {
            throw new DocumentException(
                    "$",
                    Phrase.of("json.documentCharacters", text.length(), DocumentLimits.MOST_CHARACTERS),
                    Phrase.of("json.sendFewerJournal"));
        }
    }

    private static Place parse(JsonParser parser, String text) {
        try {
            JsonNode tree = Tree.read(parser);
            checkEnd(parser);
            return Place.root(tree);
        } catch (ReadLimits.Exceeded e) {
            throw new DocumentException(pathOf(parser), e.problem(), Phrase.of("json.keepWithinLimits"), e);
        } catch (JacksonException e) {
            throw unreadable(parser, text, e);
        }
    }

    /** The library's own words name its switches, so only its kind of mistake and its place are taken over. */
    private static DocumentException unreadable(JsonParser parser, String text, JacksonException e) {
        if (e.getOriginalMessage().startsWith("Duplicate")) {
            return new DocumentException(
                    pathOf(parser),
                    Phrase.of("json.twice", e.getLocation().getLineNr()),
                    Phrase.of("json.keepOneTwo"),
                    e);
        }
        int at = (int) e.getLocation().getCharOffset();
        SyntaxFault fault = new SyntaxFault(text, at, within(parser));
        return new DocumentException(pathOf(parser), fault.problem(), fault.tryThis(), e);
    }

    private static SyntaxFault.Within within(JsonParser parser) {
        TokenStreamContext context = parser.streamReadContext();
        if (context.inRoot()) {
            return SyntaxFault.Within.NOTHING;
        }
        if (context.inArray()) {
            return SyntaxFault.Within.ARRAY;
        }
        return parser.currentToken() == JsonToken.PROPERTY_NAME ? SyntaxFault.Within.NAME : SyntaxFault.Within.OBJECT;
    }

    private static void checkEnd(JsonParser parser) {
        boolean ended;
        try {
            ended = parser.nextToken() == null;
        } catch (JacksonException noToken) {
            ended = false;
        }
        if (!ended) {
            throw new DocumentException("$", Phrase.of("json.thereTextAfter"), Phrase.of("json.sendOneObject"));
        }
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
