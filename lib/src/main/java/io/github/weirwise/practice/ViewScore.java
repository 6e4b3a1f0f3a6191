package io.github.weirwise.practice;

import io.github.weirwise.diagnosis.Cause;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A trainee's fault sheet beside the truth.
 *
 * @param atHours when it was given
 * @param view what was said
 * @param onTruth share given to what was really the matter, 0 to 1
 */
public record ViewScore(double atHours, SessionStep.OwnView view, double onTruth) {
    /** Rejects null. */
    public ViewScore {
        Objects.requireNonNull(view, "view");
    }

    static List<ViewScore> of(PracticeSession session) {
        List<ViewScore> scores = new ArrayList<>();
        for (LogLine line : session.log()) {
            if (line.step() instanceof SessionStep.OwnView view) {
                Set<Cause> truth = session.scenario().faultsAt(line.fromHours()).stream()
                        .map(HiddenFault::cause)
                        .collect(Collectors.toSet());
                scores.add(new ViewScore(line.fromHours(), view, view.faults().onTruth(truth)));
            }
        }
        return scores;
    }
}
