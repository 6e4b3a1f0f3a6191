package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.CauseShare;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.util.ArrayList;
import java.util.List;

/** Results that would prove an advice wrong, and where to look then. */
final class ChangeOfMind {
    private static final double LEAST_SHARE = 0.03;

    private final Situation situation;

    ChangeOfMind(Situation situation) {
        this.situation = situation;
    }

    List<Phrase> lines(Step step, Expectation expectation) {
        List<Phrase> lines = new ArrayList<>();
        if (step instanceof Step.MoveWeir || step instanceof Step.Hold || step instanceof Step.ServicePart) {
            lines.add(Phrase.of(
                    "advice.mind.below",
                    Quantity.of(expectation.skimmateMlPerDay().low(), Unit.MILLILITRE_PER_DAY),
                    nextCause()));
            lines.add(Phrase.of(
                    "advice.mind.above",
                    Quantity.of(expectation.skimmateMlPerDay().high(), Unit.MILLILITRE_PER_DAY)));
        }
        if (step instanceof Step.Look) {
            lines.add(Phrase.of("advice.mind.look"));
        }
        if (step instanceof Step.MakeSafe) {
            lines.add(Phrase.of("advice.mind.safe"));
        }
        return lines;
    }

    /** The likeliest cause that asks for something else than the first does. */
    private Phrase nextCause() {
        List<CauseShare> causes = situation.diagnosis().causes();
        for (CauseShare each : causes) {
            boolean other = each.cause().remedy().kind()
                            != causes.get(0).cause().remedy().kind()
                    || each.cause().serviceable()
                            && each.cause() != causes.get(0).cause();
            if (other && each.probability() >= LEAST_SHARE) {
                return Phrase.of(each.cause().nameKey());
            }
        }
        return Phrase.of("diagnosis.cause.SOMETHING_ELSE");
    }
}
