package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.CauseShare;
import io.github.weirwise.diagnosis.Diagnosis;
import io.github.weirwise.diagnosis.ObservationWords;
import io.github.weirwise.reading.Reading;
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
    private static final int MOST_CAUSES = 3;
    private static final double LEAST_SHARE = 0.04;

    private final Diagnosis diagnosis;
    private final GuardScene scene;
    private final Optional<Step> rival;

    Reasons(Diagnosis diagnosis, GuardScene scene, Optional<Step> rival) {
        this.diagnosis = diagnosis;
        this.scene = scene;
        this.rival = rival;
    }

    Reason why(Step step, Expectation expectation) {
        List<Reason> parts = new ArrayList<>();
        parts.add(seen());
        parts.add(state());
        parts.add(likely());
        parts.add(choice(step, expectation));
        return new Reason(headline(), parts);
    }

    private Phrase headline() {
        CauseShare top = diagnosis.likeliest();
        if (diagnosis.causes().size() > 1 && close(top, diagnosis.causes().get(1))) {
            CauseShare next = diagnosis.causes().get(1);
            return Phrase.of(
                    "advice.why.between",
                    Phrase.of("advice.verdict." + diagnosis.verdict()),
                    Phrase.of(top.cause().nameKey()),
                    Phrase.of(next.cause().nameKey()));
        }
        return Phrase.of(
                "advice.why.headline",
                Phrase.of("advice.verdict." + diagnosis.verdict()),
                Phrase.of(top.cause().nameKey()),
                share(top.probability()));
    }

    /** Two causes are not told apart while the likelier one has less than half of all, or the other comes near it. */
    private static boolean close(CauseShare top, CauseShare next) {
        return top.probability() < 0.5 || next.probability() > 0.6 * top.probability();
    }

    /** What was read last. */
    Reason seen() {
        List<Reason> lines = scene.journal().last(Reading.class).stream()
                .flatMap(reading -> reading.observations().stream())
                .map(observation -> Reason.of(ObservationWords.of(observation)))
                .toList();
        return lines.isEmpty()
                ? Reason.of(Phrase.of("advice.why.nothingSeen"))
                : new Reason(Phrase.of("advice.why.seen"), lines);
    }

    private Reason state() {
        return Reason.of(
                Phrase.of("advice.why.state"),
                Reason.of(Phrase.of(
                        "advice.why.level",
                        QuantityRange.of(diagnosis.submergenceMm(), Unit.MILLIMETRE),
                        Quantity.of(scene.unit().target().submergenceMm(), Unit.MILLIMETRE))),
                Reason.of(Phrase.of(
                        "advice.why.amount",
                        QuantityRange.of(diagnosis.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                        QuantityRange.of(scene.unit().target().skimmateBandMlPerDay(), Unit.MILLILITRE_PER_DAY))));
    }

    private Reason likely() {
        List<Reason> causes = diagnosis.causes().stream()
                .limit(MOST_CAUSES)
                .filter(each -> each.probability() >= LEAST_SHARE)
                .map(each -> new Reason(
                        Phrase.of("advice.why.cause", Phrase.of(each.cause().nameKey()), share(each.probability())),
                        each.evidence().because()))
                .toList();
        return new Reason(Phrase.of("advice.why.likely"), causes);
    }

    private Reason choice(Step step, Expectation expectation) {
        List<Reason> lines = new ArrayList<>();
        if (!(step instanceof Step.Look || step instanceof Step.MakeSafe)) {
            lines.add(Reason.of(Phrase.of("advice.why.chance", share(expectation.chanceOnTarget()))));
        }
        if (step instanceof Step.Look) {
            lines.add(Reason.of(Phrase.of("advice.why.lookPays")));
        }
        if (step instanceof Step.ServicePart service) {
            lines.add(Reason.of(Phrase.of("advice.why.partFirst", Phrase.of("diagnosis.part." + service.part()))));
        }
        if (step instanceof Step.MoveWeir move) {
            lines.add(Reason.of(Phrase.of("advice.why.size")));
            if (move.probe()) {
                lines.add(Reason.of(Phrase.of("advice.why.probe")));
            }
        }
        rival.ifPresent(other -> lines.add(Reason.of(Phrase.of("advice.why.rival", StepWords.of(other, scene.now())))));
        return new Reason(Phrase.of("advice.why.choice"), lines);
    }

    private static Quantity share(double value) {
        return Quantity.of(value, Unit.SHARE);
    }
}
