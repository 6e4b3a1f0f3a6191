package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.diagnosis.Diagnosis;
import io.github.weirwise.report.Reason;
import io.github.weirwise.report.Warning;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts the chosen step together with what to expect, when to look, why, what would change it, and cautions. */
final class AdviceWriter {
    private final Belief belief;
    private final GuardScene scene;
    private final AdviserOptions options;
    private final Optional<Step> rival;
    private final Diagnosis diagnosis;

    /**
     * @param rival the best step of another kind, when steps were weighed
     */
    AdviceWriter(Belief belief, GuardScene scene, AdviserOptions options, Optional<Step> rival) {
        this.belief = belief;
        this.scene = scene;
        this.options = options;
        this.rival = rival;
        this.diagnosis = belief.diagnosis(Outlay.floodLog(belief.unit()));
    }

    /** The advice for a step that the choice came to. */
    Advice write(Step step) {
        return write(step, Optional.empty());
    }

    /** The advice for a step that a rule of the guard asks for. */
    Advice write(Guard guard) {
        return write(guard.step(), Optional.of(guard.rule()));
    }

    private Advice write(Step step, Optional<GuardRule> rule) {
        Expectation expectation = new Forecast(belief).after(step);
        LookAgain look = new LookAgain(options.clocks(), scene.now());
        Optional<Duration> full = new AnswerGuard(scene).fullBefore(look.nextVisit(step), expectation);
        return new Advice(
                step,
                StepWords.of(step, scene.now()),
                diagnosis,
                expectation,
                look.floodLookAt(step, full),
                look.judgeAt(step),
                why(step, expectation, rule),
                new ChangeOfMind(scene).lines(step, rule),
                cautions(step, full, rule));
    }

    /** A rule of the guard stands on what was seen; the belief's view, which may differ, is left out of its reasons. */
    private Reason why(Step step, Expectation expectation, Optional<GuardRule> rule) {
        Reasons reasons = new Reasons(diagnosis, scene, belief.toReadAgain(), rival);
        return rule.isPresent()
                ? new Reason(rule.get().words(), List.of(reasons.seen()))
                : reasons.why(step, expectation);
    }

    private List<Warning> cautions(Step step, Optional<Duration> full, Optional<GuardRule> rule) {
        List<Warning> cautions = new ArrayList<>(new Cautions(scene).of(step, full));
        if (rule.isEmpty()) {
            cautions.addAll(diagnosis.warnings());
        }
        return Warning.ranked(cautions);
    }
}
