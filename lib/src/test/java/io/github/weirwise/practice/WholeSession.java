package io.github.weirwise.practice;

/** Sessions played to their end, by the hands of the library and by a careful keeper who only the evidence compares with. */
public final class WholeSession {
    /** A careful keeper with a calendar and no model. */
    public static final Hands KEEPER = new Hands("KEEPER", new KeeperVisitor());

    private WholeSession() {}

    /** From wherever the session stands. */
    public static PracticeSession by(Hands hands, PracticeSession from) {
        return hands.play(from, () -> false);
    }
}
