package io.github.weirwise.json;

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
}
