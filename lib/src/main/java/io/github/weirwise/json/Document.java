package io.github.weirwise.json;

/**
 * A whole document: an object with a version and the members of one shape.
 *
 * @param <T> what the document holds
 */
record Document<T>(Shape<T> content) {
    T read(String text) {
        Place root = Parser.parse(text);
        FormatVersion.take(root);
        return content.read(root);
    }

    String write(T value) {
        return Tree.print(FormatVersion.stamp(content.write(value)));
    }
}
