package io.github.weirwise.json;

/** Foreign text made fit for an error message: short, on one line, without control characters. */
final class Quote {
    private static final int LONGEST = 60;

    private Quote() {}

    static String of(String text) {
        return '"' + plain(text, LONGEST) + '"';
    }

    static String plain(String text, int longest) {
        StringBuilder shown = new StringBuilder();
        text.codePoints().limit(longest).forEach(c -> shown.appendCodePoint(harmless(c) ? c : '?'));
        return text.codePointCount(0, text.length()) > longest ? shown + "..." : shown.toString();
    }

    private static boolean harmless(int c) {
        int type = Character.getType(c);
        return !Character.isISOControl(c)
                && type != Character.SURROGATE
                && type != Character.FORMAT
                && type != Character.LINE_SEPARATOR
                && type != Character.PARAGRAPH_SEPARATOR;
    }
}
