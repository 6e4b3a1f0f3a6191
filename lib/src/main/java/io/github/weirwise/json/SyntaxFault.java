package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
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
        NOTHING("json.expected.object", "json.expected.nothing"),
        OBJECT("json.expected.name", "json.expected.commaOrBrace"),
        NAME("json.expected.colon", "json.expected.colon"),
        ARRAY("json.expected.value", "json.expected.commaOrBracket");

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
    Phrase problem() {
        if (isEnd()) {
            return Phrase.of(
                    "json.syntax.ends",
                    line(text.length()),
                    column(text.length()),
                    Phrase.of(isText() ? "json.expected.quote" : expected()));
        }
        Phrase what = Phrase.of("json.syntax.found", Quote.of(shown()), Phrase.of(expected()));
        if (isControl()) {
            what = Phrase.of("json.syntax.control", String.format(Locale.ROOT, "U+%04X", (int) text.charAt(at)));
        } else if (isEscape()) {
            what = Phrase.of("json.syntax.backslash", Quote.of(shown()));
        }
        return Phrase.of("json.syntax.notJson", line(start()), column(start()), what);
    }

    /** What to try. */
    Phrase tryThis() {
        if (isEnd()) {
            return Phrase.of("json.try.whole");
        }
        if (isControl()) {
            return Phrase.of("json.try.escape");
        }
        if (isEscape()) {
            return Phrase.of("json.try.backslash");
        }
        String shown = shown();
        if (NOT_FINITE.matcher(shown).matches()) {
            return Phrase.of("json.try.finite");
        }
        if (LIKE_NUMBER.matcher(shown).matches() || isAfterNumber()) {
            return Phrase.of("json.try.number");
        }
        if (LIKE_WORD.matcher(shown).matches()) {
            return Phrase.of("json.try.quotes");
        }
        return switch (text.charAt(at)) {
            case '\'', '\u2018', '\u2019', '\u201c', '\u201d' -> Phrase.of("json.try.plainQuotes");
            case '/', '#' -> Phrase.of("json.try.comments");
            case '\uFEFF' -> Phrase.of("json.try.mark");
            default -> Phrase.of("json.try.look");
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
            case ':' -> "json.expected.value";
            case '{' -> "json.expected.nameOrBrace";
            case '[' -> "json.expected.valueOrBracket";
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

    private int line(int index) {
        return (int) text.substring(0, index).chars().filter(c -> c == '\n').count() + 1;
    }

    private int column(int index) {
        return index - text.substring(0, index).lastIndexOf('\n');
    }
}
