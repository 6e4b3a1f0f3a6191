package io.github.weirwise.advice;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.time.Duration;
import java.time.Instant;

/** A step in words. */
final class StepWords {
    private StepWords() {}

    static Phrase of(Step step, Instant now) {
        if (step instanceof Step.MoveWeir move) {
            return Phrase.of(
                    key(move),
                    Quantity.of(Math.abs(move.byMm()), Unit.MILLIMETRE),
                    Quantity.of(move.toCrestMm(), Unit.MILLIMETRE));
        }
        if (step instanceof Step.Hold hold) {
            double hours = Math.max(0, Duration.between(now, hold.until()).toMinutes() / 60.0);
            return Phrase.of(
                    "advice.step.hold", Phrase.of("advice.hold." + hold.reason()), Quantity.of(hours, Unit.HOUR));
        }
        if (step instanceof Step.Look look) {
            return Phrase.of(
                    "advice.step.look",
                    Phrase.of("advice.look." + look.what()),
                    Quantity.of(look.what().minutes(), Unit.MINUTE));
        }
        if (step instanceof Step.ServicePart service) {
            return Phrase.of("advice.service." + service.part());
        }
        return Phrase.of("advice.safe." + ((Step.MakeSafe) step).how());
    }

    private static String key(Step.MoveWeir move) {
        if (move.probe()) {
            return move.byMm() > 0 ? "advice.step.raiseProbe" : "advice.step.lowerProbe";
        }
        return move.byMm() > 0 ? "advice.step.raise" : "advice.step.lower";
    }
}
