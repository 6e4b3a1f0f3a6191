package io.github.weirwise.watch;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Expectation;
import io.github.weirwise.advice.Step;
import io.github.weirwise.diagnosis.Diagnosis;
import io.github.weirwise.diagnosis.Ledgers;
import io.github.weirwise.diagnosis.Verdict;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Reason;
import io.github.weirwise.unit.FoamState;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Advice as a counsel might give it, only the step and the two chances of which matter. */
final class GivenAdvice {
    private GivenAdvice() {}

    static Advice of(Step step, double onTargetNow, double onTargetThen) {
        Range range = new Range(0, 1);
        Phrase said = Phrase.of("advice.given", step.toString());
        return new Advice(
                step,
                said,
                new Diagnosis(
                        Verdict.TOO_DRY,
                        Map.of(FoamState.ON_TARGET, onTargetNow),
                        List.of(),
                        range,
                        range,
                        new Ledgers(List.of(), List.of(), range, range),
                        0,
                        0,
                        List.of()),
                new Expectation(range, range, range, onTargetThen),
                Optional.empty(),
                Instant.EPOCH,
                Reason.of(said),
                List.of(),
                List.of());
    }
}
