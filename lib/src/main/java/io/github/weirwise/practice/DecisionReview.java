package io.github.weirwise.practice;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Step;
import io.github.weirwise.diagnosis.ObservationWords;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/** Finds a session's decisions and plays each on with the adviser. */
final class DecisionReview {
    /** Each is played to the end, so there is a limit; the earliest ones teach most. */
    private static final int MOST = 8;

    private static final double LONG_WAIT_HOURS = 6;
    private static final double KNOWN_HOURS = 30;

    private final PracticeSession session;
    private final BooleanSupplier stop;

    DecisionReview(PracticeSession session, BooleanSupplier stop) {
        this.session = session;
        this.stop = stop;
    }

    List<Decision> decisions() {
        List<Decision> decisions = new ArrayList<>();
        for (LogLine line : session.log()) {
            if (decisions.size() < MOST && isDecision(line)) {
                decisions.add(decision(line));
            }
        }
        return decisions;
    }

    private static boolean isDecision(LogLine line) {
        boolean free = !line.insideWait() && line.untilHours() - line.fromHours() >= LONG_WAIT_HOURS;
        boolean waits = line.step() instanceof SessionStep.Wait || line.step() instanceof SessionStep.RunOn;
        return line.step() instanceof SessionStep.Do || free && waits;
    }

    private Decision decision(LogLine line) {
        PracticeSession before = session.rewoundTo(line.number() - 1);
        Advice advice = before.soundAdvice();
        PracticeSession branch = Hands.ADVISER.play(Comparison.withInjections(before, session), stop);
        return new Decision(
                line.number() - 1,
                line.fromHours(),
                did(line),
                known(before),
                advice,
                agrees(line.step(), advice.step()),
                Outcome.of(branch),
                branch.track());
    }

    private static Phrase did(LogLine line) {
        return line.step() instanceof SessionStep.Do done
                ? done.act().words()
                : Phrase.of("practice.did.waited", Quantity.of(line.untilHours() - line.fromHours(), Unit.HOUR));
    }

    /** The newest of each kind of observation that is not older than about a day. */
    private static List<Phrase> known(PracticeSession before) {
        Instant since = before.now().minus(Duration.ofMinutes((long) (60 * KNOWN_HOURS)));
        Map<Object, Phrase> newest = new LinkedHashMap<>();
        for (Reading reading : before.journal().all(Reading.class)) {
            if (reading.at().isAfter(since)) {
                for (Observation each : reading.observations()) {
                    Object kind = each instanceof Observation.Inspection found ? found.part() : each.getClass();
                    newest.put(kind, ObservationWords.of(each));
                }
            }
        }
        return List.copyOf(newest.values());
    }

    private static boolean agrees(SessionStep done, Step advised) {
        if (!(done instanceof SessionStep.Do act)) {
            return advised instanceof Step.Hold;
        }
        return AdviserVisitor.acts(advised).stream().anyMatch(sound -> alike(act.act(), sound));
    }

    private static boolean alike(Act done, Act sound) {
        return done instanceof Act.MoveWeir move
                ? sound instanceof Act.MoveWeir other && Math.signum(other.byMm()) == Math.signum(move.byMm())
                : done.equals(sound);
    }
}
