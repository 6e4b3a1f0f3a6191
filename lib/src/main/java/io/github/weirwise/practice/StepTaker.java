package io.github.weirwise.practice;

import io.github.weirwise.advice.Clocks;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.tank.TankEvent;
import io.github.weirwise.unit.Part;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Takes one step in a draft, or refuses it. */
final class StepTaker {
    /** Nobody stops the clock at eight to wait for twenty past. */
    private static final double MINUTES_LATER_HOURS = 1;

    private final SessionDraft draft;
    private final Scenario scenario;

    StepTaker(SessionDraft draft) {
        this.draft = draft;
        this.scenario = draft.scenario;
    }

    void take(SessionStep step) {
        if (step instanceof SessionStep.LookAt look) {
            lookAt(look.look());
        } else if (step instanceof SessionStep.Do act) {
            act(act);
        } else if (step instanceof SessionStep.Wait wait) {
            clockMayRun();
            runOnTo(draft.bench.hours() + wait.minutes() / 60);
        } else if (step instanceof SessionStep.RunOn) {
            clockMayRun();
            runOnTo(nextMorning());
        } else if (step instanceof SessionStep.OwnView view) {
            draft.view = Optional.of(view);
        } else if (step instanceof SessionStep.Answer answer) {
            answer(answer);
        } else if (step instanceof SessionStep.OpenAdvice) {
            openAdvice();
        } else if (step instanceof SessionStep.AskHint) {
            askHint();
        } else if (step instanceof SessionStep.Inject inject) {
            inject(inject);
        } else if (step instanceof SessionStep.Say say) {
            draft.said.add(new Message(draft.bench.hours(), say.says()));
        } else if (step instanceof SessionStep.Ask ask) {
            draft.asked.add(ask.question(draft.asked.size() + 1, draft.bench.hours()));
        } else if (step instanceof SessionStep.Hold hold) {
            draft.held = hold.on();
        } else {
            draft.revealed = true;
        }
    }

    private void clockMayRun() {
        if (draft.bench.hours() >= scenario.endsAtHour()) {
            throw refused("practice.refused.over");
        }
        if (draft.held) {
            throw refused("practice.refused.held");
        }
        List<Question> open = draft.open();
        if (!open.isEmpty()) {
            throw new RefusedStepException(
                    Phrase.of("practice.refused.question", open.get(0).ask()));
        }
    }

    private void lookAt(Look look) {
        clockMayRun();
        if (!scenario.offers().has(look)) {
            throw new RefusedStepException(Phrase.of("practice.refused.look", look.words()));
        }
        pass(scenario.offers().minutes(look));
        draft.read(look);
    }

    private void act(SessionStep.Do step) {
        clockMayRun();
        Act act = step.act();
        if (!scenario.offers().has(act)) {
            throw new RefusedStepException(Phrase.of("practice.refused.act", act.words()));
        }
        double now = draft.bench.hours();
        boolean change = !(act instanceof Act.StopAir || act instanceof Act.StartAir);
        if (change && now < draft.settledAtHours && step.reason().isBlank()) {
            throw refused("practice.refused.reason");
        }
        Doing done = Doing.of(draft.bench, act);
        draft.bench = done.bench();
        done.noted().forEach(draft::write);
        pass(scenario.offers().minutes(act));
        if (change) {
            draft.settledAtHours = Math.max(draft.settledAtHours, now + settlesWithin(act));
        }
        draft.view = Optional.empty();
        draft.adviceOpen = false;
    }

    /** Hours after which an act's result can be judged (common practice, from memory). */
    private static double settlesWithin(Act act) {
        Duration judge = Clocks.COMMON_PRACTICE.judge();
        boolean washed = act instanceof Act.ServicePart service && service.part() == Part.NECK_AND_CUP;
        Duration away = washed ? Clocks.COMMON_PRACTICE.afterWashing() : Duration.ZERO;
        return (judge.compareTo(away) > 0 ? judge : away).toMinutes() / 60.0;
    }

    private void happen(TankEvent event) {
        draft.bench = draft.bench.withEvents(List.of(event));
    }

    private void answer(SessionStep.Answer answer) {
        Question question = draft.open().stream()
                .filter(each -> each.name().equals(answer.question()))
                .findFirst()
                .orElseThrow(() -> new RefusedStepException(Phrase.of("practice.refused.notAsked", answer.question())));
        if (answer.choice() > question.choices().size()) {
            throw refused("practice.refused.choice");
        }
        draft.answers.put(answer.question(), answer);
    }

    private void openAdvice() {
        if (guidance() == Guidance.NONE && !draft.revealed) {
            throw refused("practice.refused.noAdvice");
        }
        if (draft.view.isEmpty()) {
            throw refused("practice.refused.ownViewFirst");
        }
        draft.adviceOpen = true;
    }

    private void askHint() {
        if (guidance() == Guidance.NONE) {
            throw refused("practice.refused.noHints");
        }
        if (draft.hintsAsked >= scenario.coaching().hints().size()) {
            throw refused("practice.refused.noMoreHints");
        }
        draft.hintsAsked++;
    }

    private void inject(SessionStep.Inject inject) {
        if (inject.event().atHours() < draft.bench.hours()) {
            throw refused("practice.refused.past");
        }
        happen(inject.event());
        if (!inject.says().isBlank()) {
            draft.said.add(new Message(draft.bench.hours(), inject.says()));
        }
    }

    private Guidance guidance() {
        return draft.options.guidance().orElse(scenario.coaching().guidance());
    }

    private void pass(double minutes) {
        draft.runTo(Math.min(scenario.endsAtHour(), draft.bench.hours() + minutes / 60));
    }

    private void runOnTo(double hours) {
        double now = draft.bench.hours();
        double until = Math.min(scenario.endsAtHour(), hours);
        for (Message each : scenario.messages()) {
            until = each.atHours() > now ? Math.min(until, each.atHours()) : until;
        }
        for (Question each : scenario.coaching().questions()) {
            boolean later = each.when() == Question.When.AT_HOUR && each.hours() > now;
            until = later ? Math.min(until, each.hours()) : until;
        }
        draft.runTo(until);
    }

    /** Eight o'clock, or when the last change can be judged: earlier by day, or some minutes later. */
    private double nextMorning() {
        double now = draft.bench.hours();
        double morning = Math.floor((now - 8) / 24) * 24 + 32;
        double settled = draft.settledAtHours;
        return settled > now + 0.01 && settled < morning + MINUTES_LATER_HOURS ? settled : morning;
    }

    private static RefusedStepException refused(String key) {
        return new RefusedStepException(Phrase.of(key));
    }
}
