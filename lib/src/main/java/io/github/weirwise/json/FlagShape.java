package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** {@code true} or {@code false}. */
final class FlagShape implements Shape<Boolean> {
    @Override
    public Boolean read(Place at) {
        if (!at.node().isBoolean()) {
            throw at.wrong(Phrase.of("json.trueFalse", at.found()), Phrase.of("json.writeWithoutQuotes"));
        }
        return at.node().booleanValue();
    }

    @Override
    public JsonNode write(Boolean value) {
        return JsonNodeFactory.instance.booleanNode(value);
    }
}
