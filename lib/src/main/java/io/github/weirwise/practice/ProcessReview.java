package io.github.weirwise.practice;

import static io.github.weirwise.practice.ProcessPoint.Habit.*;
import static io.github.weirwise.practice.ProcessPoint.Verdict.*;

import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Count;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.unit.Part;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Looks through a session's log for habits of sound work. */
final class ProcessReview {
    private static final double SAME_VISIT_HOURS = 1.5;
    private static final double FRESH_READING_HOURS = 12;

    private final PracticeSession session;
    private final List<LogLine> log;
    private final List<LogLine> changes;

    ProcessReview(PracticeSession session) {
        this.session = session;
        log = session.log();
        changes = log.stream().filter(ProcessReview::isChange).toList();
    }

    List<ProcessPoint> points() {
        return List.of(oneAtATime(), waited(), looked(), airFirst(), safeFirst(), leftAlone());
    }

    private static boolean isChange(LogLine line) {
        return line.step() instanceof SessionStep.Do act
                && !(act.act() instanceof Act.StopAir || act.act() instanceof Act.StartAir);
    }

    private static Act act(LogLine line) {
        return ((SessionStep.Do) line.step()).act();
    }

    private ProcessPoint oneAtATime() {
        for (int i = 1; i < changes.size(); i++) {
            if (changes.get(i).fromHours() - changes.get(i - 1).untilHours() < SAME_VISIT_HOURS) {
                return point(ONE_CHANGE_AT_A_TIME, MISSED, "practice.review.two", changes.get(i));
            }
        }
        return changes.size() < 2
                ? new ProcessPoint(
                        ONE_CHANGE_AT_A_TIME,
                        changes.isEmpty() ? NO_OCCASION : KEPT,
                        Phrase.of("practice.review.changes", changes.size()))
                : new ProcessPoint(
                        ONE_CHANGE_AT_A_TIME,
                        KEPT,
                        Phrase.of("practice.review.apart", Count.of(changes.size(), "report.count.changes")));
    }

    private ProcessPoint waited() {
        Optional<LogLine> early = changes.stream().filter(LogLine::insideWait).findFirst();
        if (early.isPresent()) {
            String reason = ((SessionStep.Do) early.get().step()).reason();
            return new ProcessPoint(
                    WAITED_FOR_THE_FOAM,
                    MISSED,
                    Phrase.of(
                            "practice.review.early",
                            hour(early.get()),
                            act(early.get()).words(),
                            reason));
        }
        return changes.isEmpty()
                ? new ProcessPoint(WAITED_FOR_THE_FOAM, NO_OCCASION, Phrase.of("practice.review.changes", 0))
                : new ProcessPoint(WAITED_FOR_THE_FOAM, KEPT, Phrase.of("practice.review.waited"));
    }

    private ProcessPoint looked() {
        for (LogLine change : changes) {
            if (!lookedBefore(change, each -> true, FRESH_READING_HOURS)) {
                return point(LOOKED_BEFORE_MOVING, MISSED, "practice.review.blind", change);
            }
        }
        return changes.isEmpty()
                ? new ProcessPoint(LOOKED_BEFORE_MOVING, NO_OCCASION, Phrase.of("practice.review.changes", 0))
                : new ProcessPoint(LOOKED_BEFORE_MOVING, KEPT, Phrase.of("practice.review.looked"));
    }

    private ProcessPoint airFirst() {
        Optional<LogLine> raise = changes.stream()
                .filter(line -> act(line) instanceof Act.MoveWeir move && move.byMm() > 0)
                .findFirst();
        if (raise.isEmpty()) {
            return new ProcessPoint(RULED_OUT_THE_AIR_INTAKE, NO_OCCASION, Phrase.of("practice.review.noRaise"));
        }
        boolean seen = lookedBefore(raise.get(), ProcessReview::showsAir, Double.POSITIVE_INFINITY);
        return seen
                ? point(RULED_OUT_THE_AIR_INTAKE, KEPT, "practice.review.airSeen", raise.get())
                : point(RULED_OUT_THE_AIR_INTAKE, MISSED, "practice.review.airUnseen", raise.get());
    }

    private static boolean showsAir(Observation observation) {
        return observation instanceof Observation.AirFlow
                || observation instanceof Observation.Inspection found && found.part() == Part.AIR_LINE;
    }

    /** Whether the trainee took a reading of a kind before a change, at most so many hours old. */
    private boolean lookedBefore(LogLine change, Predicate<Observation> kind, double hours) {
        return log.stream()
                .filter(line -> line.number() < change.number()
                        && line.step() instanceof SessionStep.LookAt
                        && change.fromHours() - line.untilHours() <= hours)
                .flatMap(line -> line.written().stream())
                .filter(Reading.class::isInstance)
                .flatMap(entry -> ((Reading) entry).observations().stream())
                .anyMatch(kind);
    }

    private ProcessPoint safeFirst() {
        double arrival = session.scenario().start().arrivesAtHour();
        Optional<TrackPoint> flood = session.track().stream()
                .filter(each -> each.hours() >= arrival && each.flooding())
                .findFirst();
        if (flood.isEmpty()) {
            return new ProcessPoint(MADE_SAFE_FIRST, NO_OCCASION, Phrase.of("practice.review.noFlood"));
        }
        Optional<LogLine> first = log.stream()
                .filter(line -> line.step() instanceof SessionStep.Do
                        && line.untilHours() >= flood.get().hours())
                .findFirst();
        if (first.isEmpty()) {
            return new ProcessPoint(
                    MADE_SAFE_FIRST,
                    MISSED,
                    Phrase.of(
                            "practice.review.floodLeft",
                            SessionClock.words(flood.get().hours())));
        }
        boolean safe = GoalChecks.makesSafe(act(first.get()));
        return point(
                MADE_SAFE_FIRST,
                safe ? KEPT : MISSED,
                safe ? "practice.review.madeSafe" : "practice.review.notSafe",
                first.get());
    }

    private ProcessPoint leftAlone() {
        boolean sound = session.scenario().faults().stream().allMatch(fault -> fault.cause() == Cause.NOTHING_WRONG);
        boolean leave = session.scenario().goals().leaveWeir();
        long moves = changes.stream()
                .filter(line -> act(line) instanceof Act.MoveWeir)
                .count();
        if (!leave) {
            return new ProcessPoint(LEFT_WELL_ALONE, NO_OCCASION, Phrase.of("practice.review.weirFree"));
        }
        return moves == 0
                ? new ProcessPoint(
                        LEFT_WELL_ALONE,
                        KEPT,
                        Phrase.of(sound ? "practice.review.leftSound" : "practice.review.leftWeir"))
                : new ProcessPoint(LEFT_WELL_ALONE, MISSED, Phrase.of("practice.review.moved", (int) moves));
    }

    private static ProcessPoint point(
            ProcessPoint.Habit habit, ProcessPoint.Verdict verdict, String key, LogLine line) {
        return new ProcessPoint(
                habit, verdict, Phrase.of(key, hour(line), act(line).words()));
    }

    private static Phrase hour(LogLine line) {
        return SessionClock.words(line.fromHours());
    }
}
