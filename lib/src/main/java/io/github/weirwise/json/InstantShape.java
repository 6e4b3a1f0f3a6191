package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
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
                    Phrase.of(
                            "json.mustBeBetween",
                            at.found(),
                            String.valueOf(DocumentLimits.EARLIEST),
                            String.valueOf(DocumentLimits.LATEST)),
                    Phrase.of("json.checkYear"));
        }
        return instant;
    }

    private static Instant parse(Place at) {
        Phrase tryThis = Phrase.of("json.writeTZ");
        if (!at.node().isString()) {
            throw at.wrong(Phrase.of("json.timeText", at.found()), tryThis);
        }
        try {
            return Instant.parse(at.node().stringValue());
        } catch (DateTimeException e) {
            throw at.wrong(Phrase.of("json.dateTimeZone", at.found()), tryThis, e);
        }
    }

    @Override
    public JsonNode write(Instant value) {
        return JsonNodeFactory.instance.stringNode(value.toString());
    }
}
