package io.github.weirwise.sheet;

import java.nio.charset.StandardCharsets;

/** Lines of an iCalendar file: escaping (RFC 5545, 3.3.11) and folding at 75 octets of UTF-8 (3.1), ended by CR and LF. */
final class ContentLine {
    private static final int LONGEST_OCTETS = 75;
    private static final String END = "\r\n";

    private ContentLine() {}

    /** A property whose value is text; characters that the standard forbids are left out. */
    static String text(String property, String value) {
        return plain(property, escaped(value));
    }

    /** A property whose value needs no escaping. */
    static String plain(String property, String value) {
        return folded(property + ":" + value) + END;
    }

    private static String escaped(String value) {
        StringBuilder text = new StringBuilder();
        value.replace("\r\n", "\n").replace('\r', '\n').codePoints().forEach(c -> {
            switch (c) {
                case '\\', ';', ',' -> text.append('\\').appendCodePoint(c);
                case '\n' -> text.append("\\n");
                default -> {
                    if (allowed(c)) {
                        text.appendCodePoint(c);
                    }
                }
            }
        });
        return text.toString();
    }

    /** Control characters are forbidden but for the tab; a lone half of a pair is no character at all. */
    private static boolean allowed(int c) {
        boolean control = c < 0x20 && c != '\t' || c == 0x7f || c >= 0x80 && c < 0xa0;
        return !control && !(c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE);
    }

    /** A folded line goes on after CR, LF and one space, which counts for the next line; no character is cut in two. */
    private static String folded(String line) {
        StringBuilder text = new StringBuilder();
        int octets = 0;
        for (int i = 0; i < line.length(); ) {
            String one = new String(Character.toChars(line.codePointAt(i)));
            int more = one.getBytes(StandardCharsets.UTF_8).length;
            if (octets + more > LONGEST_OCTETS) {
                text.append(END).append(' ');
                octets = 1;
            }
            text.append(one);
            octets += more;
            i += one.length();
        }
        return text.toString();
    }
}
