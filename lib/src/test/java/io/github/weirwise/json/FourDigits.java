package io.github.weirwise.json;

import java.math.BigDecimal;
import java.math.MathContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A document with its numbers at four digits, so that an example is read more easily and holds on every machine. */
final class FourDigits {
    private FourDigits() {}

    static JsonNode of(JsonNode node) {
        if (node.isArray()) {
            ArrayNode array = JsonNodeFactory.instance.arrayNode();
            node.forEach(each -> array.add(of(each)));
            return array;
        }
        if (node.isObject()) {
            ObjectNode object = JsonNodeFactory.instance.objectNode();
            node.properties().forEach(each -> object.set(each.getKey(), of(each.getValue())));
            return object;
        }
        if (!node.isNumber()) {
            return node;
        }
        BigDecimal rounded = new BigDecimal(node.doubleValue()).round(new MathContext(4));
        return JsonNodeFactory.instance.numberNode(rounded.abs().doubleValue() < 1e-9 ? 0.0 : rounded.doubleValue());
    }
}
