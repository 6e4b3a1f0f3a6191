package io.github.weirwise.advice;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Part;
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
            return service.also().isEmpty() ? work(service.part()) : works(service);
        }
        return safe((Step.MakeSafe) step);
    }

    private static Phrase works(Step.ServicePart service) {
        Phrase also = work(service.also().get(0));
        for (Part part : service.also().subList(1, service.also().size())) {
            also = Phrase.of("advice.step.andService", also, work(part));
        }
        return Phrase.of("advice.step.alsoService", work(service.part()), also);
    }

    private static Phrase work(Part part) {
        return Phrase.of("advice.service." + part);
    }

    private static Phrase safe(Step.MakeSafe safe) {
        Quantity by = Quantity.of(Math.abs(safe.byMm()), Unit.MILLIMETRE);
        Quantity crest = Quantity.of(safe.toCrestMm(), Unit.MILLIMETRE);
        Quantity air = Quantity.of(safe.airLitresPerHour(), Unit.LITRE_PER_HOUR);
        return switch (safe.how()) {
            case LOWER_WEIR -> Phrase.of("advice.safe.LOWER_WEIR", by, crest);
            case LESS_AIR -> Phrase.of("advice.safe.LESS_AIR", air);
            case STOP_THE_AIR -> Phrase.of("advice.safe.STOP_THE_AIR");
            case START_THE_AIR ->
                safe.byMm() < 0
                        ? Phrase.of("advice.safe.LOWER_AND_START_THE_AIR", by, crest, air)
                        : Phrase.of("advice.safe.START_THE_AIR", air);
            case START_PUMPS -> Phrase.of("advice.safe.START_PUMPS");
        };
    }

    private static String key(Step.MoveWeir move) {
        if (move.probe()) {
            return move.byMm() > 0 ? "advice.step.raiseProbe" : "advice.step.lowerProbe";
        }
        return move.byMm() > 0 ? "advice.step.raise" : "advice.step.lower";
    }
}
