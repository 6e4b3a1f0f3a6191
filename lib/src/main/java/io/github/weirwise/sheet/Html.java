package io.github.weirwise.sheet;

/** Text made harmless for HTML and SVG, in content and in quoted attributes alike. */
final class Html {
    private Html() {}

    /** Marks become entities; characters that HTML forbids, and lone halves of pairs, become a replacement character. */
    static String escaped(String words) {
        StringBuilder text = new StringBuilder(words.length() + 16);
        words.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> text.append("&amp;");
                case '<' -> text.append("&lt;");
                case '>' -> text.append("&gt;");
                case '"' -> text.append("&quot;");
                case '\'' -> text.append("&#39;");
                default -> text.appendCodePoint(forbidden(c) ? 0xfffd : c);
            }
        });
        return text.toString();
    }

    /** An element with escaped content. */
    static String element(String name, String words) {
        return "<" + name + ">" + escaped(words) + "</" + name + ">\n";
    }

    private static boolean forbidden(int c) {
        boolean control = c < 0x20 && c != '\t' && c != '\n' && c != '\r' || c >= 0x7f && c < 0xa0;
        boolean noncharacter = (c & 0xfffe) == 0xfffe || c >= 0xfdd0 && c <= 0xfdef;
        return control || noncharacter || c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
    }
}
