package io.github.weirwise.practice;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Step;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.Part;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** Follows the adviser: looks as asked, then one step, then back when it says so or the next day. */
final class AdviserVisitor implements Hands.Visitor {
    private static final int MOST_LOOKS = 6;
    private static final double MOST_LOWER_MM = 50;
    private static final double DAY = 24;
    private static final double SURE = 0.8;
    private static final double FLOOD_LOOK_MINUTES = 30;

    @Override
    public PracticeSession visit(PracticeSession from) {
        PracticeSession session = weeklyRound(from);
        if (session.over()) {
            return session;
        }
        Advice advice = session.soundAdvice();
        for (int looks = 0; advice.step() instanceof Step.Look look && looks < MOST_LOOKS; looks++) {
            session = Hands.passOver(session.look(Look.of(look.what())));
            if (session.over()) {
                return session;
            }
            advice = session.soundAdvice();
        }
        if (advice.step() instanceof Step.Hold hold) {
            double until = Math.min(SessionClock.hours(hold.until()), session.hours() + DAY);
            return Hands.waitUntil(session, until);
        }
        PracticeSession done = doAll(session, advice);
        if (advice.step() instanceof Step.MakeSafe) {
            done = afterwards(done);
        }
        PracticeSession seen = done == session ? session : floodLook(done);
        return Hands.waitUntil(seen, done.hours() + DAY);
    }

    /** Every act of the advised visit that the scenario offers, one after another; may be none. */
    private static PracticeSession doAll(PracticeSession session, Advice advice) {
        PracticeSession now = session;
        for (Act act : acts(advice.step())) {
            if (!now.over() && now.scenario().offers().has(act)) {
                now = Hands.passOver(now.act(act, expected(advice, act), "as advised"));
            }
        }
        return now;
    }

    /** What is asked for once the flood was answered: looks, and services of what they show. */
    private static PracticeSession afterwards(PracticeSession safe) {
        PracticeSession now = safe;
        for (int steps = 0; steps < MOST_LOOKS && !now.over(); steps++) {
            Advice next = now.soundAdvice();
            if (next.step() instanceof Step.Look look && look.what().part().isPresent()) {
                now = Hands.passOver(now.look(Look.of(look.what())));
            } else if (next.step() instanceof Step.ServicePart) {
                now = doAll(now, next);
            } else {
                break;
            }
        }
        return now;
    }

    /** A glance half an hour after an act; what runs over then is made safe. */
    private static PracticeSession floodLook(PracticeSession done) {
        if (done.over() || !done.airOn() || !done.scenario().offers().has(Look.FOAM_LOOK)) {
            return done;
        }
        PracticeSession later = Hands.passOver(done.waitFor(FLOOD_LOOK_MINUTES));
        if (later.over()) {
            return later;
        }
        PracticeSession seen = Hands.passOver(later.look(Look.FOAM_LOOK));
        Advice advice = seen.soundAdvice();
        return advice.step() instanceof Step.MakeSafe ? doAll(seen, advice) : seen;
    }

    /** Once a week past the unit: how deep the media stand, as a part of the usual round of the house. */
    private static PracticeSession weeklyRound(PracticeSession session) {
        Act lift = new Act.ServicePart(Part.SUMP_LEVEL);
        Offers offers = session.scenario().offers();
        Instant since = session.now().minus(Duration.ofDays(7));
        boolean seen = session.journal().all(Reading.class).stream()
                .filter(reading -> reading.at().isAfter(since))
                .anyMatch(AdviserVisitor::showsSump);
        if (seen || !offers.has(Look.SUMP_LEVEL) || !offers.has(lift)) {
            return session;
        }
        PracticeSession looked = Hands.passOver(session.look(Look.SUMP_LEVEL));
        boolean bad = looked.lastReading()
                .flatMap(reading -> reading.find(Observation.Inspection.class))
                .filter(found -> found.finding() == Finding.BAD)
                .isPresent();
        Prediction expected = new Prediction(Trend.SAME, Trend.SAME, 1, SURE);
        return bad && !looked.over() ? Hands.passOver(looked.act(lift, expected, "weekly round")) : looked;
    }

    private static boolean showsSump(Reading reading) {
        return reading.observations().stream()
                .anyMatch(each -> each instanceof Observation.Inspection found && found.part() == Part.SUMP_LEVEL);
    }

    /** The acts that an advised step asks for, in order; none for waiting and looking. */
    static List<Act> acts(Step step) {
        if (step instanceof Step.MoveWeir move) {
            return List.of(new Act.MoveWeir(move.byMm()));
        }
        if (step instanceof Step.ServicePart service) {
            return service.parts().stream().<Act>map(Act.ServicePart::new).toList();
        }
        if (step instanceof Step.MakeSafe safe) {
            return List.of(actOf(safe));
        }
        return List.of();
    }

    private static Act actOf(Step.MakeSafe safe) {
        return switch (safe.how()) {
            case LOWER_WEIR -> new Act.MoveWeir(Math.max(-MOST_LOWER_MM, safe.byMm()));
            case LESS_AIR -> new Act.SetAir(safe.airLitresPerHour());
            case STOP_THE_AIR -> new Act.StopAir();
            case START_THE_AIR, START_PUMPS -> new Act.StartAir();
        };
    }

    private static Prediction expected(Advice advice, Act act) {
        double now = Math.max(0.1, advice.diagnosis().skimmateMlPerDay().middle());
        double factor = Math.max(
                0.02, Math.min(50, advice.expectation().skimmateMlPerDay().middle() / now));
        Trend foam = act instanceof Act.StopAir ? Trend.LESS : Trend.ofFactor(factor);
        Trend level = act instanceof Act.MoveWeir move ? Trend.ofLevel(move.byMm()) : Trend.SAME;
        return new Prediction(level, foam, foam == Trend.SAME ? 1 : Math.max(factor, 1 / factor), SURE);
    }
}
