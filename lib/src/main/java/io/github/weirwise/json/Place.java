package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * One value in a document together with the way to it, so that an error can say where it is.
 *
 * @param above the value that holds this one; null for the whole document
 * @param step last step of the path
 * @param node the value; null when there is none
 */
record Place(Place above, String step, JsonNode node) {
    private static final Pattern PLAIN_NAME = Pattern.compile("[A-Za-z_][A-Za-z0-9_]*");
    private static final int LONGEST_STEP = 60;

    static Place root(JsonNode node) {
        return new Place(null, "$", node);
    }

    Place member(String name) {
        return new Place(this, memberStep(name), node.get(name));
    }

    /** A member that is taken out of its object, so that what is left can be read without it. */
    Place take(String name) {
        return new Place(this, memberStep(name), ((ObjectNode) node).remove(name));
    }

    Place element(int index) {
        return new Place(this, elementStep(index), node.get(index));
    }

    /** This place, sure to hold something. */
    Place given() {
        if (isMissing()) {
            throw wrong(Phrase.of("json.missing"), Phrase.of("json.give", name()));
        }
        return this;
    }

    /** Name of a member that is known here, as it stands in its path. */
    String name() {
        return step.substring(1);
    }

    boolean isMissing() {
        return node == null;
    }

    String path() {
        StringBuilder path = new StringBuilder();
        for (Place each = this; each != null; each = each.above) {
            path.insert(0, each.step);
        }
        return path.toString();
    }

    DocumentException wrong(Phrase problem, Phrase tryThis) {
        return new DocumentException(path(), problem, tryThis);
    }

    DocumentException wrong(Phrase problem, Phrase tryThis, Throwable cause) {
        return new DocumentException(path(), problem, tryThis, cause);
    }

    /** This place, sure to hold an object. */
    Place asObject() {
        if (!node.isObject()) {
            throw wrong(Phrase.of("json.object", found()), Phrase.of("json.writeBetween"));
        }
        return this;
    }

    /** What stands here, in words. */
    Phrase found() {
        if (node.isString()) {
            return Phrase.of("json.found.text", Quote.of(node.stringValue()));
        }
        if (node.isNumber()) {
            return Phrase.of("json.found.number", Quote.plain(node.toString(), LONGEST_STEP));
        }
        if (node.isObject() || node.isArray()) {
            return Phrase.of(node.isObject() ? "json.found.object" : "json.found.array");
        }
        return Phrase.of("report.words", node.toString());
    }

    static String memberStep(String name) {
        String shown = Quote.plain(name, LONGEST_STEP);
        return PLAIN_NAME.matcher(shown).matches() ? "." + shown : "['" + shown.replace("'", "\\'") + "']";
    }

    static String elementStep(int index) {
        return "[" + index + "]";
    }
}
