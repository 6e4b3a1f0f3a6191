package io.github.weirwise.json;

import java.io.StringWriter;
import java.util.Map;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.JsonRecyclerPools;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Trees from the tokens of a strict parser, and back. Jackson's mapper would do the same, but it first loads several hundred
 * classes for the binding of objects, which is not used here: most of what the first document used to cost.
 */
final class Tree {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    /** Neither a table of names nor used buffers are kept: one document must never leave anything behind for the next. */
    private static final JsonFactory STREAMS = JsonFactory.builder()
            .disable(TokenStreamFactory.Feature.CANONICALIZE_PROPERTY_NAMES)
            .recyclerPool(JsonRecyclerPools.nonRecyclingPool())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .streamReadConstraints(new ReadLimits())
            .build();

    private Tree() {}

    static JsonParser parser(String text) {
        return STREAMS.createParser(ObjectReadContext.empty(), text);
    }

    /** The next value of the parser, missing where there is none. It goes down no deeper than the parser's limits let it. */
    static JsonNode read(JsonParser parser) {
        JsonToken first = parser.nextToken();
        return first == null ? NODES.missingNode() : value(parser, first);
    }

    private static JsonNode value(JsonParser parser, JsonToken token) {
        return switch (token) {
            case START_OBJECT -> object(parser);
            case START_ARRAY -> array(parser);
            case VALUE_STRING -> NODES.stringNode(parser.getString());
            case VALUE_NUMBER_INT -> wholeNumber(parser);
            case VALUE_NUMBER_FLOAT -> NODES.numberNode(parser.getDoubleValue());
            case VALUE_TRUE -> NODES.booleanNode(true);
            case VALUE_FALSE -> NODES.booleanNode(false);
            case VALUE_NULL -> NODES.nullNode();
            default -> throw new IllegalStateException("a strict parser gave " + token + " where a value begins");
        };
    }

    private static JsonNode object(JsonParser parser) {
        ObjectNode object = NODES.objectNode();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            object.set(name, value(parser, parser.nextToken()));
        }
        return object;
    }

    private static JsonNode array(JsonParser parser) {
        ArrayNode array = NODES.arrayNode();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            array.add(value(parser, token));
        }
        return array;
    }

    private static JsonNode wholeNumber(JsonParser parser) {
        return switch (parser.getNumberType()) {
            case INT -> NODES.numberNode(parser.getIntValue());
            case LONG -> NODES.numberNode(parser.getLongValue());
            default -> NODES.numberNode(parser.getBigIntegerValue());
        };
    }

    /** The tree as one line. */
    static String print(JsonNode node) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = STREAMS.createGenerator(ObjectWriteContext.empty(), text)) {
            write(node, out);
        }
        return text.toString();
    }

    private static void write(JsonNode node, JsonGenerator out) {
        switch (node.getNodeType()) {
            case OBJECT -> {
                out.writeStartObject();
                for (Map.Entry<String, JsonNode> member : node.properties()) {
                    out.writeName(member.getKey());
                    write(member.getValue(), out);
                }
                out.writeEndObject();
            }
            case ARRAY -> {
                out.writeStartArray();
                node.forEach(element -> write(element, out));
                out.writeEndArray();
            }
            case STRING -> out.writeString(node.stringValue());
            case BOOLEAN -> out.writeBoolean(node.booleanValue());
            case NUMBER -> writeNumber(node, out);
            case NULL -> out.writeNull();
            default -> throw new IllegalStateException("a document holds no " + node.getNodeType());
        }
    }

    private static void writeNumber(JsonNode node, JsonGenerator out) {
        switch (node.numberType()) {
            case INT -> out.writeNumber(node.intValue());
            case LONG -> out.writeNumber(node.longValue());
            case BIG_INTEGER -> out.writeNumber(node.bigIntegerValue());
            default -> out.writeNumber(node.doubleValue());
        }
    }
}
