package io.github.weirwise.practice;

/** Makes the tank of another lane the same as the trainee's, whatever the trainer let happen on the way. */
final class Comparison {
    private Comparison() {}

    /** A session with everything that the trainer injected later into another one. */
    static PracticeSession withInjections(PracticeSession from, PracticeSession whole) {
        PracticeSession session = from;
        int known = from.steps().size();
        for (LogLine line : whole.log()) {
            if (line.number() > known && line.step() instanceof SessionStep.Inject inject) {
                session = session.perform(new SessionStep.Inject(inject.event(), ""));
            }
        }
        return session;
    }
}
