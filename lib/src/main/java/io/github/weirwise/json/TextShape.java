package io.github.weirwise.json;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** A text that can be written as UTF-8, so without half characters. */
final class TextShape implements Shape<String> {
    @Override
    public String read(Place at) {
        if (!at.node().isString()) {
            throw at.wrong("is " + at.found() + ", must be a text", "write it in double quotes");
        }
        String text = at.node().stringValue();
        if (text.codePoints().anyMatch(c -> Character.getType(c) == Character.SURROGATE)) {
            throw at.wrong("holds half a character (a lone surrogate)", "send whole Unicode characters");
        }
        return text;
    }

    @Override
    public JsonNode write(String value) {
        return JsonNodeFactory.instance.stringNode(value);
    }
}
