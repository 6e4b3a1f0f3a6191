package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** A whole number; 2.0 is one as well. */
final class CountShape implements Shape<Integer> {
    private final NumberShape number = new NumberShape();

    @Override
    public Integer read(Place at) {
        double value = number.read(at);
        if (value != Math.rint(value) || Math.abs(value) > Integer.MAX_VALUE) {
            throw at.wrong(Phrase.of("json.wholeNumber", at.found()), Phrase.of("json.giveCount"));
        }
        return (int) value;
    }

    @Override
    public JsonNode write(Integer value) {
        return JsonNodeFactory.instance.numberNode(value);
    }
}
