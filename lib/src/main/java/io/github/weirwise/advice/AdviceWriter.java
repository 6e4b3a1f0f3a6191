package io.github.weirwise.advice;

import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.Part;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts the chosen step together with what to expect, when to look, why, what would change it, and cautions. */
final class AdviceWriter {
    private final Situation situation;
    private final StepValues values;

    AdviceWriter(Situation situation, StepValues values) {
        this.situation = situation;
        this.values = values;
    }

    Advice write(Step step) {
        Expectation expectation = new Forecast(situation).after(step);
        return new Advice(
                step,
                StepWords.of(step, situation.now()),
                situation.diagnosis(),
                expectation,
                floodLookAt(step),
                judgeAt(step),
                new Reasons(situation, values).why(step, expectation),
                new ChangeOfMind(situation).lines(step, expectation),
                cautions(step));
    }

    private Optional<Instant> floodLookAt(Step step) {
        boolean handsIn =
                step instanceof Step.MoveWeir || step instanceof Step.ServicePart || step instanceof Step.MakeSafe;
        return handsIn
                ? Optional.of(situation.now().plus(situation.options().clocks().floodLook()))
                : Optional.empty();
    }

    private Instant judgeAt(Step step) {
        if (step instanceof Step.Hold hold) {
            return hold.until();
        }
        if (step instanceof Step.Look) {
            return situation.now();
        }
        Duration wait = situation.options().clocks().judge();
        boolean washing = step instanceof Step.ServicePart service && service.part() == Part.NECK_AND_CUP;
        return situation
                .now()
                .plus(washing ? wait.plus(situation.options().clocks().afterWashing()) : wait);
    }

    private List<Warning> cautions(Step step) {
        List<Warning> cautions = new ArrayList<>(situation.diagnosis().warnings());
        if (step instanceof Step.MoveWeir || step instanceof Step.ServicePart) {
            cautions.add(Warning.danger("advice.caution.unplug"));
        }
        if (step instanceof Step.MoveWeir move && move.byMm() > 0) {
            cautions.add(Warning.caution("advice.caution.flood"));
        }
        if (step instanceof Step.MakeSafe) {
            cautions.add(Warning.danger("advice.caution.unplug"));
            cautions.add(Warning.danger("advice.caution.overflow"));
        }
        if (step instanceof Step.MakeSafe safe && safe.how() == SafeWay.STOP_THE_AIR) {
            cautions.add(Warning.danger("advice.caution.aeration"));
        }
        if (step instanceof Step.ServicePart service) {
            cautions.addAll(forPart(service.part()));
        }
        cautions.add(Warning.note("advice.caution.noDevice"));
        return Warning.ranked(cautions);
    }

    private static List<Warning> forPart(Part part) {
        return switch (part) {
            case NECK_AND_CUP -> List.of(Warning.caution("advice.caution.noDetergent"));
            case AIR_LINE -> List.of(Warning.caution("advice.caution.siphon"));
            case SALT_MIX -> List.of(Warning.caution("advice.caution.saltSlowly"));
            case FILTER_PAD -> List.of(Warning.caution("advice.caution.notAllAtOnce"));
            case INJECTOR_PUMP, INJECTOR_NOZZLE, RETURN_PUMP -> List.of(Warning.caution("advice.caution.aeration"));
            default -> List.of();
        };
    }
}
