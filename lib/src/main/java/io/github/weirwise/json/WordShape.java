package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import java.util.Arrays;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * One of a fixed list of words, spelled as the constant.
 *
 * @param <E> the list
 */
final class WordShape<E extends Enum<E>> implements Shape<E> {
    private final Class<E> words;

    WordShape(Class<E> words) {
        this.words = words;
    }

    @Override
    public E read(Place at) {
        List<String> names =
                Arrays.stream(words.getEnumConstants()).map(Enum::name).toList();
        if (!at.node().isString() || !names.contains(at.node().stringValue())) {
            throw at.wrong(
                    Phrase.of("json.notOneWords", at.found()), Phrase.of("json.useOne", String.join(", ", names)));
        }
        return Enum.valueOf(words, at.node().stringValue());
    }

    @Override
    public JsonNode write(E value) {
        return JsonNodeFactory.instance.stringNode(value.name());
    }
}
