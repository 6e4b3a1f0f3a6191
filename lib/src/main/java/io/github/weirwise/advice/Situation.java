package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.diagnosis.Diagnosis;
import io.github.weirwise.diagnosis.Expected;
import io.github.weirwise.diagnosis.Outlook;
import io.github.weirwise.diagnosis.Possibility;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.List;

/** What the choice of a step rests on: the belief, a sample of it for looking ahead, and what each expects now. */
record Situation(
        Belief belief,
        Diagnosis diagnosis,
        List<Possibility> sample,
        List<Expected> expected,
        List<Outlook> outlooks,
        Journal journal,
        Instant now,
        AdviserOptions options) {
    private static final int SAMPLE = 160;

    static Situation of(Belief belief, Journal journal, Instant now, AdviserOptions options) {
        List<Possibility> sample = belief.resampled(SAMPLE);
        List<Expected> expected = sample.stream().map(Possibility::expectedNow).toList();
        List<Outlook> outlooks = expected.stream().map(Expected::outlook).toList();
        return new Situation(belief, belief.diagnosis(), sample, expected, outlooks, journal.until(now), now, options);
    }

    SkimmerUnit unit() {
        return belief.unit();
    }

    double crestMm() {
        return belief.crestMm();
    }

    double judgeHours() {
        return options.clocks().judge().toMinutes() / 60.0;
    }
}
