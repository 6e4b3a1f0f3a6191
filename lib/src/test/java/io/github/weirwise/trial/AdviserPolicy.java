package io.github.weirwise.trial;

import io.github.weirwise.Weirwise;
import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.AdviserOptions;
import io.github.weirwise.diagnosis.CauseShare;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.Optional;

/** The library's adviser, as an embedder would call it. */
record AdviserPolicy(AdviserOptions options) implements Policy {
    @Override
    public Decision next(SkimmerUnit unit, Settings startSettings, Journal journal, Instant now) {
        Advice advice = Weirwise.advise(unit, startSettings, journal, now, options);
        CauseShare top = advice.diagnosis().likeliest();
        Stated stated = new Stated(
                top.cause(),
                top.probability(),
                advice.expectation().chanceOnTarget(),
                advice.expectation().skimmateMlPerDay(),
                advice.judgeAt());
        return new Decision(advice.step(), Optional.of(stated));
    }
}
