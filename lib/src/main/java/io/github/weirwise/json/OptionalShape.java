package io.github.weirwise.json;

import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * A value that may be left out.
 *
 * @param <T> type of the value
 */
final class OptionalShape<T> implements Shape<Optional<T>> {
    private final Shape<T> value;

    OptionalShape(Shape<T> value) {
        this.value = value;
    }

    @Override
    public Optional<T> read(Place at) {
        return Optional.of(value.read(at));
    }

    @Override
    public JsonNode write(Optional<T> held) {
        return held.map(value::write).orElse(null);
    }
}
