package io.github.weirwise.practice;

import static io.github.weirwise.practice.ProcessPoint.Habit.*;
import static io.github.weirwise.practice.ProcessPoint.Verdict.*;

import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Count;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.unit.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Looks through a session's log for habits of sound work. */
final class ProcessReview {
    private static final double SAME_VISIT_HOURS = 1.5;
    private static final double FRESH_READING_HOURS = 12;

    private final PracticeSession session;
    private final List<LogLine> log;
    private final List<LogLine> changes;

    private final Prices prices;

    ProcessReview(PracticeSession session) {
        this(session, Prices.NONE);
    }

    ProcessReview(PracticeSession session, Prices prices) {
        this.session = session;
        this.prices = prices;
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
        List<LogLine> offending = new ArrayList<>();
        for (int i = 1; i < changes.size(); i++) {
            if (changes.get(i).fromHours() - changes.get(i - 1).untilHours() < SAME_VISIT_HOURS) {
                offending.add(changes.get(i));
            }
        }
        Phrase apart = changes.size() < 2
                ? Phrase.of("practice.review.changes", changes.size())
                : Phrase.of("practice.review.apart", Count.of(changes.size(), "report.count.changes"));
        return ofChanges(ONE_CHANGE_AT_A_TIME, offending, "practice.review.two", apart);
    }

    private ProcessPoint waited() {
        List<LogLine> early = changes.stream().filter(LogLine::insideWait).toList();
        Phrase kept = Phrase.of("practice.review.waited");
        if (early.isEmpty()) {
            return ofChanges(WAITED_FOR_THE_FOAM, early, "", kept);
        }
        String reason = ((SessionStep.Do) early.get(0).step()).reason();
        return new ProcessPoint(
                WAITED_FOR_THE_FOAM,
                MISSED,
                Phrase.of(
                        "practice.review.early",
                        hour(early.get(0)),
                        act(early.get(0)).words(),
                        reason),
                prices.of(early));
    }

    private ProcessPoint looked() {
        List<LogLine> blind = changes.stream()
                .filter(change -> !lookedBefore(change, each -> true, FRESH_READING_HOURS))
                .toList();
        return ofChanges(LOOKED_BEFORE_MOVING, blind, "practice.review.blind", Phrase.of("practice.review.looked"));
    }

    /** Of the changes: missed where one offends, kept where none does, no occasion where there is none. */
    private ProcessPoint ofChanges(ProcessPoint.Habit habit, List<LogLine> offending, String key, Phrase kept) {
        if (!offending.isEmpty()) {
            return point(habit, MISSED, key, offending);
        }
        return changes.isEmpty()
                ? new ProcessPoint(habit, NO_OCCASION, Phrase.of("practice.review.changes", 0))
                : new ProcessPoint(habit, KEPT, kept);
    }

    private ProcessPoint airFirst() {
        List<LogLine> raises = changes.stream()
                .filter(line -> act(line) instanceof Act.MoveWeir move && move.byMm() > 0)
                .toList();
        List<LogLine> unseen = raises.stream()
                .filter(raise -> !lookedBefore(raise, ProcessReview::showsAir, Double.POSITIVE_INFINITY))
                .toList();
        if (!unseen.isEmpty()) {
            return point(RULED_OUT_THE_AIR_INTAKE, MISSED, "practice.review.airUnseen", unseen);
        }
        if (!raises.isEmpty()) {
            return point(RULED_OUT_THE_AIR_INTAKE, KEPT, "practice.review.airSeen", raises);
        }
        boolean looked = log.stream().anyMatch(line -> observations(line).anyMatch(ProcessReview::showsAir));
        return looked
                ? new ProcessPoint(RULED_OUT_THE_AIR_INTAKE, KEPT, Phrase.of("practice.review.airLooked"))
                : new ProcessPoint(RULED_OUT_THE_AIR_INTAKE, NO_OCCASION, Phrase.of("practice.review.noRaise"));
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
                .flatMap(ProcessReview::observations)
                .anyMatch(kind);
    }

    private static Stream<Observation> observations(LogLine line) {
        return line.written().stream()
                .filter(Reading.class::isInstance)
                .flatMap(entry -> ((Reading) entry).observations().stream());
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
                List.of(first.get()));
    }

    private ProcessPoint leftAlone() {
        boolean sound = session.scenario().faults().stream().allMatch(fault -> fault.cause() == Cause.NOTHING_WRONG);
        boolean leave = session.scenario().goals().leaveWeir();
        List<LogLine> moves = changes.stream()
                .filter(line -> act(line) instanceof Act.MoveWeir)
                .toList();
        if (!leave) {
            return new ProcessPoint(LEFT_WELL_ALONE, NO_OCCASION, Phrase.of("practice.review.weirFree"));
        }
        return moves.isEmpty()
                ? new ProcessPoint(
                        LEFT_WELL_ALONE,
                        KEPT,
                        Phrase.of(sound ? "practice.review.leftSound" : "practice.review.leftWeir"))
                : new ProcessPoint(
                        LEFT_WELL_ALONE, MISSED, Phrase.of("practice.review.moved", moves.size()), prices.of(moves));
    }

    private ProcessPoint point(
            ProcessPoint.Habit habit, ProcessPoint.Verdict verdict, String key, List<LogLine> lines) {
        LogLine first = lines.get(0);
        double cost = verdict == MISSED ? prices.of(lines) : 0;
        return new ProcessPoint(
                habit, verdict, Phrase.of(key, hour(first), act(first).words()), cost);
    }

    private static Phrase hour(LogLine line) {
        return SessionClock.words(line.fromHours());
    }
}
