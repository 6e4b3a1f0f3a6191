package io.github.weirwise.practice;

import io.github.weirwise.report.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * One course of the same tank.
 *
 * @param who whose hands
 * @param outcome what it came to
 * @param track the course from the trainee's coming in
 * @param marks acts and looks on it
 */
public record Lane(Phrase who, Outcome outcome, List<TrackPoint> track, List<Mark> marks) {
    /**
     * Something done on a course.
     *
     * @param atHours when
     * @param act whether it was an act, not a look
     * @param what what, in words
     */
    public record Mark(double atHours, boolean act, Phrase what) {
        /** Rejects null. */
        public Mark {
            Objects.requireNonNull(what, "what");
        }
    }

    /** Copies the lists; rejects nulls. */
    public Lane {
        Objects.requireNonNull(who, "who");
        Objects.requireNonNull(outcome, "outcome");
        track = List.copyOf(track);
        marks = List.copyOf(marks);
    }

    static Lane of(Phrase who, PracticeSession session) {
        double arrival = session.scenario().start().arrivesAtHour();
        List<TrackPoint> course =
                session.track().stream().filter(each -> each.hours() >= arrival).toList();
        List<Mark> marks = new ArrayList<>();
        for (LogLine line : session.log()) {
            if (line.step() instanceof SessionStep.Do done) {
                marks.add(new Mark(line.fromHours(), true, done.act().words()));
            } else if (line.step() instanceof SessionStep.LookAt look) {
                marks.add(new Mark(line.untilHours(), false, look.look().words()));
            }
        }
        return new Lane(who, Outcome.of(session), course, marks);
    }
}
