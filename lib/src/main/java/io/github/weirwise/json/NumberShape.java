package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** A finite number, written without quotes. */
final class NumberShape implements Shape<Double> {
    @Override
    public Double read(Place at) {
        if (!at.node().isNumber()) {
            throw at.wrong(Phrase.of("json.number", at.found()), Phrase.of("json.writeDigitsWithout"));
        }
        double value = at.node().doubleValue();
        if (!Double.isFinite(value)) {
            throw at.wrong(Phrase.of("json.tooLargeFor", at.found()), Phrase.of("json.giveFiniteNumber"));
        }
        return value;
    }

    @Override
    public JsonNode write(Double value) {
        if (!Double.isFinite(value)) {
            throw new DocumentException(
                    "$", Phrase.of("json.numberJsonFinite", String.valueOf(value)), Phrase.of("json.checkInputs"));
        }
        return JsonNodeFactory.instance.numberNode(value);
    }
}
