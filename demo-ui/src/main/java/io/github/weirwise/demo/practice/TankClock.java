package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.SessionClock;
import io.github.weirwise.report.Phrase;
import java.time.Instant;

/** Tells the hours of a scenario as day and hour; day 1 is the day on which the trainee comes in. */
final class TankClock {
    private final Clock clock;

    TankClock(PracticeSession session) {
        clock = new Clock(start(session));
    }

    static Instant start(PracticeSession session) {
        return SessionClock.at(session.scenario().start().arrivesAtHour());
    }

    Phrase when(double hours) {
        return when(SessionClock.at(hours));
    }

    Phrase when(Instant at) {
        return clock.when(at, "when");
    }
}
