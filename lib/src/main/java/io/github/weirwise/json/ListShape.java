package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * An array of equal shapes.
 *
 * @param <T> type of the elements
 */
final class ListShape<T> implements Shape<List<T>> {
    private final Shape<T> element;

    ListShape(Shape<T> element) {
        this.element = element;
    }

    @Override
    public List<T> read(Place at) {
        if (!at.node().isArray()) {
            throw at.wrong(Phrase.of("json.array", at.found()), Phrase.of("json.writeElementsBetween"));
        }
        if (at.node().size() > DocumentLimits.MOST_ELEMENTS) {
            throw at.wrong(
                    Phrase.of("json.elements", at.node().size(), DocumentLimits.MOST_ELEMENTS),
                    Phrase.of("json.leaveOutOldest"));
        }
        List<T> values = new ArrayList<>();
        for (int i = 0; i < at.node().size(); i++) {
            values.add(element.read(at.element(i)));
        }
        return values;
    }

    @Override
    public JsonNode write(List<T> values) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        values.forEach(value -> array.add(element.write(value)));
        return array;
    }
}
