package io.github.weirwise.json;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** A document laid out for a page: what fits stands on one line, the rest is indented. */
final class Laid {
    private static final int WIDTH = 118;

    private Laid() {}

    static String out(JsonNode node) {
        return of(node, "", 0) + "\n";
    }

    private static String of(JsonNode node, String indent, int before) {
        String line = line(node);
        if (!node.isContainer() || indent.length() + before + line.length() <= WIDTH && !indent.isEmpty()) {
            return line;
        }
        String inner = indent + "  ";
        List<String> parts = new ArrayList<>();
        if (node.isArray()) {
            node.forEach(each -> parts.add(inner + of(each, inner, 0)));
            return "[\n" + String.join(",\n", parts) + "\n" + indent + "]";
        }
        node.properties().forEach(each -> {
            String name = "\"" + each.getKey() + "\": ";
            parts.add(inner + name + of(each.getValue(), inner, name.length()));
        });
        return "{\n" + String.join(",\n", parts) + "\n" + indent + "}";
    }

    private static String line(JsonNode node) {
        List<String> parts = new ArrayList<>();
        if (node.isArray()) {
            node.forEach(each -> parts.add(line(each)));
            return "[" + String.join(", ", parts) + "]";
        }
        if (node.isObject()) {
            node.properties().forEach(each -> parts.add("\"" + each.getKey() + "\": " + line(each.getValue())));
            return "{" + String.join(", ", parts) + "}";
        }
        return node.isNumber() && node.doubleValue() == Math.rint(node.doubleValue())
                ? String.valueOf(node.longValue())
                : node.toString();
    }
}
