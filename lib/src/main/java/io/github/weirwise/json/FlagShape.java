package io.github.weirwise.json;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** {@code true} or {@code false}. */
final class FlagShape implements Shape<Boolean> {
    @Override
    public Boolean read(Place at) {
        if (!at.node().isBoolean()) {
            throw at.wrong("is " + at.found() + ", must be true or false", "write it without quotes");
        }
        return at.node().booleanValue();
    }

    @Override
    public JsonNode write(Boolean value) {
        return JsonNodeFactory.instance.booleanNode(value);
    }
}
