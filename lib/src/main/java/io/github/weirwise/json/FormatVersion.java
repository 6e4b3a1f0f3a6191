package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The member {@code version} of a document; it may stand anywhere among the others. */
final class FormatVersion {
    /** Version 1 was never published. */
    static final int CURRENT = 2;

    private static final int DRAFT = 1;
    private static final String NAME = "version";
    private static final Phrase TRY = Phrase.of("json.thisReaderKnows", CURRENT);

    private FormatVersion() {}

    /** Takes the version out of a document. */
    static void take(Place document) {
        Place version = document.asObject().take(NAME);
        if (version.isMissing()) {
            throw version.wrong(Phrase.of("json.missing"), Phrase.of("json.addVersion", CURRENT));
        }
        check(version);
    }

    /** The same of a request: one that still says 1, as the draft's did, is answered if its members are known. */
    static void takeOfRequest(Place document) {
        Place version = document.asObject().member(NAME);
        if (!version.isMissing() && version.node().isNumber() && version.node().doubleValue() == DRAFT) {
            document.take(NAME);
        } else {
            take(document);
        }
    }

    /** The same for a part that may bring one along. */
    static void takeOptional(Place part) {
        Place version = part.take(NAME);
        if (!version.isMissing()) {
            check(version);
        }
    }

    private static void check(Place version) {
        JsonNode node = version.node();
        if (!node.isNumber() || node.doubleValue() != CURRENT) {
            throw version.wrong(Phrase.of("json.mustBe", version.found(), CURRENT), TRY);
        }
    }

    /** A document that starts with its version. */
    static ObjectNode stamp(JsonNode content) {
        ObjectNode document = JsonNodeFactory.instance.objectNode().put(NAME, CURRENT);
        document.setAll((ObjectNode) content);
        return document;
    }
}
