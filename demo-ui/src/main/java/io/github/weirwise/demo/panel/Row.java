package io.github.weirwise.demo.panel;

/**
 * A line of a list with its state and what stands behind it.
 *
 * @param state the state in a word, also said by its mark
 * @param mark how grave the state is
 * @param title the line
 * @param detail everything about it, in paragraphs
 */
public record Row(String state, Mark mark, String title, String detail) {
    /** How grave a state is; told by shape as well as by colour. */
    public enum Mark {
        GOOD,
        MIND,
        BAD,
        DONE
    }

    @Override
    public String toString() {
        return state + ": " + title;
    }
}
