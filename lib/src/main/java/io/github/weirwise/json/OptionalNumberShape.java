package io.github.weirwise.json;

import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;

/** A number that may be left out. */
final class OptionalNumberShape implements Shape<OptionalDouble> {
    private final NumberShape number = new NumberShape();

    @Override
    public OptionalDouble read(Place at) {
        return OptionalDouble.of(number.read(at));
    }

    @Override
    public JsonNode write(OptionalDouble held) {
        return held.isPresent() ? number.write(held.getAsDouble()) : null;
    }
}
