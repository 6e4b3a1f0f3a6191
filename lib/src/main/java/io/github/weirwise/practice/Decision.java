package io.github.weirwise.practice;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.report.Phrase;
import java.util.List;
import java.util.Objects;

/**
 * One moment at which the trainee acted, or could have and waited: what was known, what the adviser would have done and
 * why, and what would have come of it.
 *
 * @param steps how many steps of the session lie before it; {@link PracticeSession#rewoundTo} carries on from there
 * @param atHours when, on the scenario's clock
 * @param did what the trainee did
 * @param known the newest readings at that moment
 * @param advice what the adviser would have said with the same journal
 * @param agrees whether the trainee did about that
 * @param whatIf the scenario's end, had the adviser's way been taken from here on
 * @param whatIfTrack the course of that branch
 */
public record Decision(
        int steps,
        double atHours,
        Phrase did,
        List<Phrase> known,
        Advice advice,
        boolean agrees,
        Outcome whatIf,
        List<TrackPoint> whatIfTrack) {
    /** Copies the lists; rejects nulls. */
    public Decision {
        Objects.requireNonNull(did, "did");
        known = List.copyOf(known);
        Objects.requireNonNull(advice, "advice");
        Objects.requireNonNull(whatIf, "whatIf");
        whatIfTrack = List.copyOf(whatIfTrack);
    }
}
