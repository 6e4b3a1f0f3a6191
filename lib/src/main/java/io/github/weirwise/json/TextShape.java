package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** A text that can be written as UTF-8, so without half characters. */
final class TextShape implements Shape<String> {
    @Override
    public String read(Place at) {
        if (!at.node().isString()) {
            throw at.wrong(Phrase.of("json.text", at.found()), Phrase.of("json.writeDoubleQuotes"));
        }
        String text = at.node().stringValue();
        if (text.codePoints().anyMatch(c -> Character.getType(c) == Character.SURROGATE)) {
            throw at.wrong(Phrase.of("json.holdsHalfCharacter"), Phrase.of("json.sendWholeUnicode"));
        }
        return text;
    }

    @Override
    public JsonNode write(String value) {
        return JsonNodeFactory.instance.stringNode(value);
    }
}
