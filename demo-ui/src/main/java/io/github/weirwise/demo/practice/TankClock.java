package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.SessionClock;
import io.github.weirwise.report.Phrase;
import java.time.Instant;

/** Tells the hours of a scenario as the debrief does. */
final class TankClock {
    private final Clock clock;

    TankClock(PracticeSession session) {
        clock = of(session);
    }

    static Clock of(PracticeSession session) {
        return Clock.practice(SessionClock.at(session.scenario().start().arrivesAtHour()));
    }

    Phrase when(double hours) {
        return when(SessionClock.at(hours));
    }

    Phrase when(Instant at) {
        return clock.when(at);
    }
}
