package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import java.lang.reflect.Type;
import java.util.LinkedHashMap;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * One of the records of a sealed interface, told by the member {@code type}. The list is closed: a document cannot name a
 * class.
 *
 * @param <T> the sealed interface
 */
final class ChoiceShape<T> implements Shape<T> {
    private static final String TYPE = "type";

    private final Map<String, Shape<Object>> byName = new LinkedHashMap<>();

    ChoiceShape(Class<T> sealed, Shapes shapes) {
        for (Class<?> each : sealed.getPermittedSubclasses()) {
            byName.put(nameOf(each), shapes.of((Type) each));
        }
    }

    @Override
    public T read(Place at) {
        Place type = at.asObject().take(TYPE);
        Phrase known = Phrase.of("json.useOne", String.join(", ", byName.keySet()));
        if (type.isMissing()) {
            throw type.wrong(Phrase.of("json.missing"), known);
        }
        Shape<Object> shape = byName.get(Plain.TEXT.read(type));
        if (shape == null) {
            throw type.wrong(Phrase.of("json.notTypeKnown", type.found()), known);
        }
        @SuppressWarnings("unchecked")
        T value = (T) shape.read(at);
        return value;
    }

    @Override
    public JsonNode write(T value) {
        String name = nameOf(value.getClass());
        ObjectNode object = JsonNodeFactory.instance.objectNode().put(TYPE, name);
        object.setAll((ObjectNode) byName.get(name).write(value));
        return object;
    }

    static String nameOf(Class<?> type) {
        String name = type.getSimpleName();
        return Character.toLowerCase(name.charAt(0)) + name.substring(1);
    }
}
