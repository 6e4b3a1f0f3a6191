package io.github.weirwise.json;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Expectation;
import io.github.weirwise.advice.HoldReason;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.advice.SafeWay;
import io.github.weirwise.advice.Step;
import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.diagnosis.CauseShare;
import io.github.weirwise.diagnosis.Diagnosis;
import io.github.weirwise.diagnosis.Ledgers;
import io.github.weirwise.diagnosis.Verdict;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Reason;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.FoamState;
import io.github.weirwise.unit.Part;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Advice made up for the form alone: every kind of step, value and reason that an answer can hold. */
final class SampleAdvice {
    private static final Instant NOW = Instant.parse("2026-03-03T09:00:00Z");

    private SampleAdvice() {}

    static List<Advice> all() {
        return List.of(
                with(new Step.MoveWeir(3, 196, false), Optional.of(NOW.plusSeconds(1200))),
                with(new Step.MoveWeir(-1.5, 191.5, true), Optional.of(NOW.plusSeconds(1200))),
                with(new Step.Hold(NOW.plusSeconds(86400), HoldReason.STILL_SETTLING), Optional.empty()),
                with(new Step.Look(LookKind.AIR_LINE), Optional.empty()),
                with(
                        new Step.ServicePart(Part.NECK_AND_CUP, List.of(Part.FILTER_PAD)),
                        Optional.of(NOW.plusSeconds(1200))),
                with(new Step.MakeSafe(SafeWay.LOWER_WEIR, -12, 193, 150), Optional.empty()));
    }

    private static Advice with(Step step, Optional<Instant> floodLookAt) {
        Phrase nested = Phrase.of("report.range", "low", 4);
        Phrase line = Phrase.of(
                "report.sample",
                Quantity.of(3, Unit.MILLIMETRE),
                QuantityRange.of(new Range(2, 4.5), Unit.SHARE),
                nested,
                "words",
                17,
                0.25,
                List.of(nested, "and"));
        Reason why = Reason.of(line, Reason.of(nested, Reason.of(nested)), Reason.of(line));
        CauseShare air = new CauseShare(Cause.AIR_LINE_RESTRICTED, 0.7, new Range(0.2, 0.8), why);
        CauseShare none = new CauseShare(Cause.NOTHING_WRONG, 0.3, new Range(0, 1), Reason.of(nested));
        Diagnosis diagnosis = new Diagnosis(
                Verdict.TOO_DRY,
                Map.of(FoamState.TOO_DRY, 0.8, FoamState.NO_FOAM, 0.15, FoamState.ON_TARGET, 0.05),
                List.of(air, none),
                new Range(8, 12),
                new Range(20, 60),
                new Ledgers(
                        List.of(new Ledgers.Term(Ledgers.Topic.SETTING, 20, new Range(20, 20))),
                        List.of(new Ledgers.Term(Ledgers.Topic.LEVEL, -0.5, new Range(-1, 0))),
                        new Range(0.1, 0.2),
                        new Range(2, 4)),
                20,
                15,
                List.of(Warning.note("report.range", "a", "b")));
        return new Advice(
                step,
                nested,
                diagnosis,
                new Expectation(new Range(12, 16), new Range(100, 300), new Range(900, 2400), 0.6),
                floodLookAt,
                NOW.plusSeconds(86400),
                why,
                List.of(nested),
                List.of(Warning.danger("report.range", "a", "b"), Warning.caution("report.range", 1, 2)));
    }
}
