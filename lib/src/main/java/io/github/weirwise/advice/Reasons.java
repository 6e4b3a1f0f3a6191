package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Diagnosis;
import io.github.weirwise.diagnosis.ObservationWords;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.report.Band;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Reason;
import io.github.weirwise.report.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The justification of a step as a tree: what was seen, what it likely is, why this step and this size. */
final class Reasons {
    /** Fewer forecasts say nothing of how well the unit is known. */
    private static final int ENOUGH_FORECASTS = 5;

    private static final double LESS_AIR = 0.1;
    /** A factor under this would be told as 1. */
    private static final double HARDLY = 1.05;

    private final Diagnosis diagnosis;
    private final GuardScene scene;
    private final Optional<Instrument> toReadAgain;
    private final Optional<Step> rival;
    private final LikelyCauses causes;

    Reasons(Diagnosis diagnosis, GuardScene scene, Optional<Instrument> toReadAgain, Optional<Step> rival) {
        this.diagnosis = diagnosis;
        this.scene = scene;
        this.toReadAgain = toReadAgain;
        this.rival = rival;
        this.causes = new LikelyCauses(diagnosis);
    }

    Reason why(Step step, Expectation expectation) {
        List<Reason> parts = new ArrayList<>();
        parts.add(seen());
        parts.add(state());
        causes.reason(step).ifPresent(parts::add);
        parts.add(choice(step, expectation));
        return new Reason(causes.headline(step), parts);
    }

    /** What was read at the last visit. */
    Reason seen() {
        List<Reason> lines = scene.noted().latest().visit().stream()
                .map(observation -> Reason.of(ObservationWords.of(observation)))
                .toList();
        return lines.isEmpty()
                ? Reason.of(Phrase.of("advice.why.nothingSeen"))
                : new Reason(Phrase.of("advice.why.seen"), lines);
    }

    private Reason state() {
        List<Reason> lines = new ArrayList<>();
        lines.add(Reason.of(Phrase.of(
                "advice.why.level",
                QuantityRange.of(diagnosis.submergenceMm(), Unit.MILLIMETRE),
                Quantity.of(scene.unit().target().submergenceMm(), Unit.MILLIMETRE))));
        lines.add(Reason.of(Phrase.of(
                "advice.why.amount",
                QuantityRange.of(diagnosis.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                Band.of(scene.unit().target().skimmateBandMlPerDay(), Unit.MILLILITRE_PER_DAY))));
        lines.add(Reason.of(answers()));
        if (diagnosis.forecastsMade() >= ENOUGH_FORECASTS) {
            lines.add(
                    Reason.of(Phrase.of("advice.why.forecasts", diagnosis.forecastsMade(), diagnosis.forecastsHeld())));
        }
        return new Reason(Phrase.of("advice.why.state"), lines);
    }

    /** How the amount of this unit answers to weir and air, as learned so far. */
    private Phrase answers() {
        Quantity up = Quantity.of(1, Unit.MILLIMETRE);
        double perMm = Math.exp(diagnosis.ledgers().slopePerMm().middle());
        Quantity less = Quantity.of(LESS_AIR, Unit.SHARE);
        Quantity air = Quantity.of(
                Math.pow(1 - LESS_AIR, diagnosis.ledgers().airExponent().middle()), Unit.PLAIN);
        return perMm < HARDLY
                ? Phrase.of("advice.why.answersHardly", up, less, air)
                : Phrase.of("advice.why.answers", up, Quantity.of(perMm, Unit.PLAIN), less, air);
    }

    private Reason choice(Step step, Expectation expectation) {
        List<Reason> lines = new ArrayList<>();
        if (!(step instanceof Step.Look || step instanceof Step.MakeSafe)) {
            lines.add(
                    Reason.of(Phrase.of("advice.why.chance", Quantity.of(expectation.chanceOnTarget(), Unit.CHANCE))));
        }
        if (step instanceof Step.Look look) {
            boolean again = toReadAgain.isPresent() && look.what().instrument().equals(toReadAgain);
            lines.add(Reason.of(Phrase.of(again ? "advice.why.readAgain" : "advice.why.lookPays")));
        }
        if (step instanceof Step.ServicePart service) {
            lines.add(Reason.of(Phrase.of("advice.why.partFirst", Phrase.of("diagnosis.part." + service.part()))));
            if (service.parts().stream().anyMatch(part -> part.worst().levelMm() > 0)) {
                lines.add(Reason.of(Phrase.of("advice.why.levelFalls")));
            }
        }
        if (step instanceof Step.MoveWeir move) {
            lines.add(Reason.of(Phrase.of(move.byMm() > 0 ? "advice.why.sizeUp" : "advice.why.sizeDown")));
            if (move.probe()) {
                lines.add(Reason.of(Phrase.of("advice.why.probe")));
            }
        }
        rival.ifPresent(other -> lines.add(Reason.of(Phrase.of("advice.why.rival", StepWords.of(other, scene.now())))));
        return new Reason(Phrase.of("advice.why.choice"), lines);
    }
}
