package io.github.weirwise.json;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** A finite number, written without quotes. */
final class NumberShape implements Shape<Double> {
    @Override
    public Double read(Place at) {
        if (!at.node().isNumber()) {
            throw at.wrong(
                    "is " + at.found() + ", must be a number", "write the digits without quotes and without a unit");
        }
        double value = at.node().doubleValue();
        if (!Double.isFinite(value)) {
            throw at.wrong("is " + at.found() + ", too large for a number", "give a finite number");
        }
        return value;
    }

    @Override
    public JsonNode write(Double value) {
        if (!Double.isFinite(value)) {
            throw new DocumentException(
                    "$", "a number is " + value + ", JSON has finite numbers only", "check the inputs");
        }
        return JsonNodeFactory.instance.numberNode(value);
    }
}
