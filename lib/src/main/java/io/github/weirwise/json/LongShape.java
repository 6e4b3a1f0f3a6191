package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** A whole number that may be larger than a count. */
final class LongShape implements Shape<Long> {
    @Override
    public Long read(Place at) {
        if (!at.node().isIntegralNumber() || !at.node().canConvertToLong()) {
            throw at.wrong(Phrase.of("json.wholeNumber", at.found()), Phrase.of("json.giveCount"));
        }
        return at.node().longValue();
    }

    @Override
    public JsonNode write(Long value) {
        return JsonNodeFactory.instance.numberNode(value);
    }
}
