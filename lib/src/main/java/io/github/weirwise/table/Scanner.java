package io.github.weirwise.table;

/** Reads a text once from front to back; what cannot be read at a place leaves the place as it is. */
final class Scanner {
    private final String text;
    private int at;

    Scanner(String text) {
        this.text = text;
    }

    boolean atEnd() {
        return at == text.length();
    }

    /** The character here, or 0 at the end. */
    char peek() {
        return at < text.length() ? text.charAt(at) : 0;
    }

    /** Takes the character here if it is one of some. */
    boolean take(String some) {
        boolean there = at < text.length() && some.indexOf(text.charAt(at)) >= 0;
        at += there ? 1 : 0;
        return there;
    }

    /** Takes a run of characters that are all among some; may be empty. */
    String run(String some) {
        int from = at;
        while (take(some)) {
            // The place has moved on.
        }
        return text.substring(from, at);
    }

    /** Takes blanks. */
    void blanks() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    /**
     * A whole number of so many digits, which must end where the digits end; -1 if there is none.
     *
     * @param most at most 9
     */
    int digits(int least, int most) {
        int from = at;
        String digits = run(DIGITS);
        if (digits.length() < least || digits.length() > most) {
            at = from;
            return -1;
        }
        return Integer.parseInt(digits);
    }

    /** Everything from here on, stripped. */
    String rest() {
        String rest = text.substring(at).strip();
        at = text.length();
        return rest;
    }

    static final String DIGITS = "0123456789";
}
