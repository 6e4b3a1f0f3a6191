package io.github.weirwise.demo.panel;

/** Tells a press of a key from the repetitions that come while it is held down. */
public final class HeldKey {
    /** No keyboard waits longer with its first repetition; a release that was told to nobody loses no press after this. */
    private static final long LONGEST_MS = 1500;

    private boolean down;
    private long newestMs;

    /** Whether a press at a time is one of its own; a time of 0 is not known. */
    public boolean pressed(long atMs) {
        boolean again = down && atMs > 0 && atMs - newestMs < LONGEST_MS;
        down = true;
        newestMs = atMs;
        return !again;
    }

    /** The key was let go. */
    public void released() {
        down = false;
    }
}
