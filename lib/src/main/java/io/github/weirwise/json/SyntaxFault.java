package io.github.weirwise.json;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A place where a text stops being JSON (RFC 8259), in words for a person who wrote it by hand or by a program of their own.
 *
 * @param text the whole document
 * @param at index of a character that does not fit, or just behind the word that does not; the length of the text when it
 *     ends too early
 * @param within what the place is inside of
 */
record SyntaxFault(String text, int at, Within within) {
    /** What a place is inside of. */
    enum Within {
        NOTHING("an object, which begins with {", "nothing more"),
        OBJECT("a name in double quotes", "a comma or }"),
        NAME("a colon and a value", "a colon and a value"),
        ARRAY("a value", "a comma or ]");

        private final String first;
        private final String next;

        Within(String first, String next) {
            this.first = first;
            this.next = next;
        }
    }

    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9]\\d*)(\\.\\d+)?([eE][+-]?\\d+)?");
    private static final Pattern LIKE_NUMBER = Pattern.compile("[+-].*|\\.?\\d.*");
    private static final Pattern NOT_FINITE = Pattern.compile("[+-]?(?i:nan|inf|infinity)");
    private static final Pattern LIKE_WORD = Pattern.compile("\\p{L}.*");
    private static final int LONGEST_SHOWN = 40;

    SyntaxFault {
        at = Math.max(0, Math.min(at, text.length()));
    }

    /** What is wrong, with line and column. */
    String problem() {
        if (isEnd()) {
            return "the document ends" + where(text.length()) + " before it is complete: expected "
                    + (isText() ? "the closing quote of a text" : expected());
        }
        String here = "is not JSON" + where(start()) + ": ";
        if (isControl()) {
            return here
                    + String.format(Locale.ROOT, "the control character U+%04X stands there", (int) text.charAt(at));
        }
        if (isEscape()) {
            return here + "a backslash stands before " + Quote.of(shown());
        }
        return here + "found " + Quote.of(shown()) + ", expected " + expected();
    }

    /** What to try. */
    String tryThis() {
        if (isEnd()) {
            return "send the document whole; close every text, array and object";
        }
        if (isControl()) {
            return "write it as an escape such as \\n or \\u0000 inside a text, leave it out elsewhere";
        }
        if (isEscape()) {
            return "write \\\\ for a backslash, and four digits 0-9 or A-F behind \\u";
        }
        String shown = shown();
        if (NOT_FINITE.matcher(shown).matches()) {
            return "JSON has finite numbers only; leave the member out where nothing was measured";
        }
        if (LIKE_NUMBER.matcher(shown).matches() || isAfterNumber()) {
            return "write numbers like 12, -0.5 or 1.5e3: no plus sign, no leading zero, a point for decimals, no unit";
        }
        if (LIKE_WORD.matcher(shown).matches()) {
            return "write names and texts in double quotes; without quotes there are true and false only";
        }
        return switch (text.charAt(at)) {
            case '\'', '\u2018', '\u2019', '\u201c', '\u201d' -> "write names and texts in plain double quotes";
            case '/', '#' -> "leave comments out, JSON has none";
            case '\uFEFF' -> "save the document without a byte order mark";
            default -> "look at the commas, quotes and brackets just before this place";
        };
    }

    /** A word that the text ends with was most likely cut off. */
    private boolean isEnd() {
        boolean word = at < text.length() && isWordPart(start());
        return at >= text.length() || word && within != Within.NOTHING && start() + shown().length() >= text.length();
    }

    private boolean isText() {
        boolean inside = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (inside && c == '\\') {
                i++;
            } else if (c == '"') {
                inside = !inside;
            }
        }
        return inside;
    }

    private boolean isControl() {
        return text.charAt(at) < ' ';
    }

    private boolean isEscape() {
        int slash = text.lastIndexOf('\\', at - 1);
        boolean inCode = slash >= 0 && at - slash <= 5 && text.startsWith("\\u", slash);
        return slash >= 0 && slash == at - 1 || inCode && Character.digit(text.charAt(at), 16) < 0;
    }

    private boolean isAfterNumber() {
        return LIKE_WORD.matcher(shown()).matches() && Character.isDigit(lastBefore(start()));
    }

    private String expected() {
        return switch (lastBefore(start())) {
            case ':' -> "a value";
            case '{' -> "a name in double quotes or }";
            case '[' -> "a value or ]";
            case ',', ' ' -> within.first;
            default -> within.next;
        };
    }

    /** The last character before an index that is no white space; a blank when there is none. */
    private char lastBefore(int index) {
        int before = index - 1;
        while (before >= 0 && Character.isWhitespace(text.charAt(before))) {
            before--;
        }
        return before < 0 ? ' ' : text.charAt(before);
    }

    /** Where the word begins that the place is in or behind; the place itself when that word is sound. */
    private int start() {
        int start = at;
        while (start > 0 && isWordPart(start - 1)) {
            start--;
        }
        String before = text.substring(start, at);
        boolean inWord = at < text.length() && isWordPart(at);
        boolean unsound = NOT_FINITE.matcher(before).matches()
                || LIKE_NUMBER.matcher(before).matches()
                        && !NUMBER.matcher(before).matches();
        return inWord || unsound ? start : at;
    }

    private String shown() {
        int start = start();
        int end = start;
        while (end < text.length() && end - start < LONGEST_SHOWN && isWordPart(end)) {
            end++;
        }
        return end > start ? text.substring(start, end) : text.substring(start, text.offsetByCodePoints(start, 1));
    }

    private boolean isWordPart(int index) {
        char c = text.charAt(index);
        return Character.isLetterOrDigit(c) || c == '_' || c == '.' || c == '+' || c == '-';
    }

    private String where(int index) {
        String before = text.substring(0, index);
        long line = before.chars().filter(c -> c == '\n').count() + 1;
        return " at line " + line + ", column " + (index - before.lastIndexOf('\n'));
    }
}
