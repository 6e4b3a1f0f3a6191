package io.github.weirwise.practice;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.tank.TankLimitException;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * Others at the same tank, with the same random numbers: who to compare a trainee with.
 */
public final class Hands {
    /**
     * Does what the adviser says, reading by reading, looks for a flood half an hour after each act, comes when called, and
     * makes a weekly round past the unit (sump level), which the adviser does not see.
     */
    public static final Hands ADVISER = new Hands("ADVISER", new AdviserVisitor());

    /** Empties the cup once a day and does nothing else. */
    public static final Hands NOTHING = new Hands("NOTHING", session -> session);

    /** What somebody does in one visit after the usual round. */
    interface Visitor {
        PracticeSession visit(PracticeSession session);
    }

    /** The budget of work for one course; after that nobody does more than empty the cup. */
    static final int MOST_VISITS = 100;
    /** A scenario longer than this is visited every second day. */
    private static final double LONG_HOURS = 31 * 24;

    private static final double DAY = 24;
    /** The injector needs some hours before its foam can be judged. */
    private static final double AFTER_START_HOURS = 3;

    private final String name;
    private final Visitor visitor;

    Hands(String name, Visitor visitor) {
        this.name = name;
        this.visitor = visitor;
    }

    /** Who it is, in words. */
    public Phrase words() {
        return Phrase.of("practice.hands." + name);
    }

    /**
     * Plays a session to its end, from wherever it stands, until somebody wants it to stop. Where the tank cannot be followed any further the course ends early; the
     * adviser comes at most {@link #MOST_VISITS} times, after that nobody does more than empty the cup.
     *
     * @param from the session to go on from; it stays as it is
     * @param stop asked before each visit
     * @throws CancellationException once it says so
     */
    public PracticeSession play(PracticeSession from, BooleanSupplier stop) {
        PracticeSession session = passOver(from);
        if (session.held()) {
            session = session.perform(new SessionStep.Hold(false));
        }
        for (int visits = 0; !session.over(); visits++) {
            if (stop.getAsBoolean()) {
                throw new CancellationException("stopped at hour " + session.hours() + " of the scenario's clock");
            }
            try {
                session = (visits < MOST_VISITS ? this : NOTHING).visited(session);
            } catch (RefusedStepException e) {
                if (e.getCause() instanceof TankLimitException) {
                    return session;
                }
                throw e;
            }
        }
        return session;
    }

    /** One visit and the time until the next. */
    private PracticeSession visited(PracticeSession from) {
        PracticeSession session = this == ADVISER && !from.airOn() ? startAir(from) : from;
        session = round(session);
        if (session.over()) {
            return session;
        }
        double came = session.hours();
        int told = session.messages().size();
        session = passOver(visitor.visit(session));
        boolean called = session.messages().size() > told;
        return called || session.hours() > came + 0.9
                ? session
                : waitUntil(session, came + everyHours(session.scenario()));
    }

    private static double everyHours(Scenario scenario) {
        return scenario.goals().lastsHours() > LONG_HOURS ? 2 * DAY : DAY;
    }

    private static PracticeSession startAir(PracticeSession session) {
        Act start = new Act.StartAir();
        if (!session.scenario().offers().has(start)) {
            return session;
        }
        Prediction expected = new Prediction(Trend.SAME, Trend.MORE, 5, 0.9);
        PracticeSession started = passOver(session.act(start, expected));
        return waitUntil(started, started.hours() + AFTER_START_HOURS);
    }

    private static PracticeSession round(PracticeSession session) {
        if (session.over()) {
            return session;
        }
        PracticeSession seen = session;
        if (session.scenario().offers().has(Look.ROUND)) {
            return passOver(seen.look(Look.ROUND));
        }
        for (Look each : java.util.List.of(Look.FUNNEL_LEVEL, Look.CUP_VOLUME, Look.FOAM_LOOK)) {
            if (!seen.over() && session.scenario().offers().has(each)) {
                seen = passOver(seen.look(each));
            }
        }
        return seen;
    }

    /** Waits to an hour, or until somebody calls; always moves on. */
    static PracticeSession waitUntil(PracticeSession session, double hours) {
        PracticeSession now = passOver(session);
        double until = Math.max(hours, session.hours() + 1);
        int told = session.messages().size();
        while (!now.over() && until - now.hours() > 0.01 && now.messages().size() == told) {
            now = passOver(now.waitFor(Math.max(0.5, (until - now.hours()) * 60)));
        }
        return now;
    }

    /** Passes over every open question. */
    static PracticeSession passOver(PracticeSession session) {
        PracticeSession now = session;
        while (!now.questions().isEmpty()) {
            now = now.perform(new SessionStep.Answer(now.questions().get(0).name(), 0, ""));
        }
        return now;
    }
}
