package io.github.weirwise.json;

import java.time.DateTimeException;
import java.time.Instant;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** A point in time by RFC 3339, {@code 2026-03-01T08:00:00Z} or with an offset; written in UTC. */
final class InstantShape implements Shape<Instant> {
    @Override
    public Instant read(Place at) {
        Instant instant = parse(at);
        if (instant.isBefore(DocumentLimits.EARLIEST) || instant.isAfter(DocumentLimits.LATEST)) {
            throw at.wrong(
                    "is " + at.found() + ", must be " + DocumentLimits.EARLIEST + " to " + DocumentLimits.LATEST,
                    "check the year");
        }
        return instant;
    }

    private static Instant parse(Place at) {
        String tryThis = "write it like \"2026-03-01T08:00:00Z\" or \"2026-03-01T09:00:00+01:00\"";
        if (!at.node().isString()) {
            throw at.wrong("is " + at.found() + ", must be a time as text", tryThis);
        }
        try {
            return Instant.parse(at.node().stringValue());
        } catch (DateTimeException e) {
            throw at.wrong("is " + at.found() + ", must be a date with time and zone", tryThis, e);
        }
    }

    @Override
    public JsonNode write(Instant value) {
        return JsonNodeFactory.instance.stringNode(value.toString());
    }
}
