package io.github.weirwise.lab.rival;

import io.github.weirwise.Weirwise;
import io.github.weirwise.advice.Advice;
import io.github.weirwise.diagnosis.CauseShare;
import io.github.weirwise.report.Range;
import java.util.Optional;

/** The library's adviser with its default options, as an embedder would call it; the one that ships. */
public record AdviserPolicy() implements Policy {
    @Override
    public Decision next(Visit visit) {
        Advice advice = Weirwise.advise(visit.sheet(), visit.start(), visit.journal(), visit.now());
        CauseShare top = advice.diagnosis().likeliest();
        Range range = advice.expectation().skimmateMlPerDay();
        return new Decision(
                advice.step(),
                Optional.of(new Decision.Stated(
                        range.low(),
                        range.high(),
                        advice.expectation().chanceOnTarget(),
                        advice.judgeAt(),
                        top.cause().name(),
                        top.cause().part(),
                        top.probability())));
    }
}
