package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.desk.PassingTime;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.SessionClock;
import java.time.Duration;
import java.time.Instant;

/** The hours that a session has just waited, gone through once more for the eye: the level answered at once, the foam did not. */
final class WaitFilm implements PassingTime {
    private final PracticeSession session;
    private final Runnable frame;
    private Instant now;

    /** From an hour of the session's clock to where the session stands; does {@code frame} at each picture. */
    WaitFilm(PracticeSession session, double fromHours, Runnable frame) {
        this.session = session;
        this.frame = frame;
        now = SessionClock.at(fromHours);
    }

    PracticeSession session() {
        return session;
    }

    Scene scene() {
        return Moment.scene(session.tankAt(SessionClock.hours(now)));
    }

    @Override
    public Instant now() {
        return now;
    }

    @Override
    public void run(Duration time) {
        now = now.plus(time);
        frame.run();
    }

    @Override
    public void runUntilSettled() {
        run(Duration.between(now, session.now()));
    }

    @Override
    public boolean settled() {
        return !now.isBefore(session.now());
    }
}
