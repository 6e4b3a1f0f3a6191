package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.EntryWords;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.practice.LogLine;
import io.github.weirwise.practice.Prediction;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.util.ArrayList;
import java.util.List;

/** Steps of a session in words. */
final class StepWords {
    Phrase of(SessionStep step) {
        if (step instanceof SessionStep.LookAt look) {
            return look.look().words();
        }
        if (step instanceof SessionStep.Do act) {
            return act.act().words();
        }
        if (step instanceof SessionStep.Wait wait) {
            return Words.phrase("step.waited", Quantity.of(wait.minutes(), Unit.MINUTE));
        }
        if (step instanceof SessionStep.Say say) {
            return Words.phrase("step.said", say.says());
        }
        if (step instanceof SessionStep.Ask ask) {
            return Words.phrase("step.asked", ask.ask());
        }
        if (step instanceof SessionStep.Answer answer) {
            return answer(answer);
        }
        if (step instanceof SessionStep.Hold hold) {
            return Words.phrase(hold.on() ? "step.stopped" : "step.letRun");
        }
        if (step instanceof SessionStep.Inject inject) {
            return Incident.of(inject.event())
                    .map(incident -> Words.phrase("step.injected", incident.words()))
                    .orElseGet(() -> Words.phrase("step.Inject"));
        }
        return Words.phrase("step." + step.getClass().getSimpleName());
    }

    private static Phrase answer(SessionStep.Answer answer) {
        if (answer.choice() > 0) {
            return Words.phrase("step.chose", answer.choice(), answer.words());
        }
        return answer.words().isBlank() ? Words.phrase("step.passed") : Words.phrase("step.answered", answer.words());
    }

    /** What stands behind a line: what was expected, why one did not wait, what came into the journal. */
    List<String> about(LogLine line, Dress dress) {
        List<String> lines = new ArrayList<>();
        if (line.step() instanceof SessionStep.Do act) {
            Prediction said = act.prediction();
            lines.add(dress.text(
                    "step.expected",
                    said.level().levelWords(),
                    said.foam().foamWords(),
                    Quantity.of(said.times(), Unit.PLAIN),
                    Quantity.of(said.sure(), Unit.SHARE)));
            if (!act.reason().isBlank()) {
                lines.add(dress.text("step.because", act.reason()));
            }
        }
        if (line.step() instanceof SessionStep.OwnView view) {
            view.faults()
                    .shares()
                    .forEach((cause, share) -> lines.add(
                            dress.text("step.share", Phrase.of(cause.nameKey()), Quantity.of(share, Unit.SHARE))));
        }
        line.written().forEach(entry -> lines.add(dress.words().say(EntryWords.of(entry))));
        return lines;
    }
}
