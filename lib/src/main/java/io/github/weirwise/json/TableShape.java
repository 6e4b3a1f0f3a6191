package io.github.weirwise.json;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A value for each of some words, as an object; written in the order of the words.
 *
 * @param <E> the words
 * @param <T> type of the values
 */
final class TableShape<E extends Enum<E>, T> implements Shape<Map<E, T>> {
    private final Class<E> words;
    private final Shape<T> value;
    private final MemberNames spelling;

    TableShape(Class<E> words, Shape<T> value, MemberNames spelling) {
        this.spelling = spelling;
        this.words = words;
        this.value = value;
    }

    @Override
    public Map<E, T> read(Place at) {
        List<String> names =
                Arrays.stream(words.getEnumConstants()).map(Enum::name).toList();
        spelling.check(at.asObject(), names);
        Map<E, T> table = new EnumMap<>(words);
        for (E word : words.getEnumConstants()) {
            Place member = at.member(word.name());
            if (!member.isMissing()) {
                table.put(word, value.read(member));
            }
        }
        return table;
    }

    @Override
    public JsonNode write(Map<E, T> table) {
        ObjectNode object = JsonNodeFactory.instance.objectNode();
        for (E word : words.getEnumConstants()) {
            if (table.containsKey(word)) {
                object.set(word.name(), value.write(table.get(word)));
            }
        }
        return object;
    }
}
