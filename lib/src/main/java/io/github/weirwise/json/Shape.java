package io.github.weirwise.json;

import java.util.function.Function;
import tools.jackson.databind.JsonNode;

/**
 * How values of one type stand in a document.
 *
 * @param <T> type of the values
 */
interface Shape<T> {
    /**
     * The value that stands here.
     *
     * @throws DocumentException if something else stands here
     */
    T read(Place at);

    /** The value as a tree; null when it is left out. */
    JsonNode write(T value);

    /** A shape of two functions. */
    static <T> Shape<T> of(Function<Place, T> read, Function<T, JsonNode> write) {
        return new Shape<>() {
            @Override
            public T read(Place at) {
                return read.apply(at);
            }

            @Override
            public JsonNode write(T value) {
                return write.apply(value);
            }
        };
    }
}
