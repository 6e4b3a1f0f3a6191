package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.SessionStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Case, goal and safety, always in sight, and the newest that was said. */
final class CaseCard extends Card implements PracticePage {
    private static final long serialVersionUID = 1L;

    private final Prose story = new Prose();
    private final Prose goal = new Prose();
    private final Prose safety = new Prose();
    private final Prose news = new Prose();
    private transient Dress dress;

    CaseCard(Dress dress) {
        super(dress.palette(), "[grow,fill]", "");
        this.dress = dress;
        story.setName("case.story");
        goal.setName("case.goal");
        safety.setName("case.safety");
        news.setName("told");
        body().add(story, "growx, wrap");
        body().add(goal, "growx, wrap");
        body().add(safety, "growx, wrap");
        body().add(news, "growx");
        dress(dress);
    }

    @Override
    public void show(Moment moment) {
        PracticeSession session = moment.session();
        Scenario scenario = session.scenario();
        head(scenario.title());
        story.setText(String.join(" ", scenario.told()));
        goal.setText(dress.text(
                "case.goal", scenario.asks().stream().map(dress.words()::say).collect(Collectors.joining(" "))));
        safety.setText(dress.text("case.safety", Scenario.safety()));
        List<String> newest = news(session);
        news.setVisible(!newest.isEmpty());
        news.setText(String.join("\n", newest));
    }

    /** One thing: what there is to say of an answer just given, or the newest message and hint. */
    private List<String> news(PracticeSession session) {
        Optional<String> answered = session.steps().stream()
                .reduce((first, last) -> last)
                .filter(SessionStep.Answer.class::isInstance)
                .flatMap(step -> explained(session, (SessionStep.Answer) step));
        if (answered.isPresent()) {
            return List.of(answered.get());
        }
        List<String> lines = new ArrayList<>();
        TankClock clock = new TankClock(session);
        session.messages().stream()
                .skip(session.scenario().told().size())
                .reduce((first, last) -> last)
                .ifPresent(each -> lines.add(dress.text("told.line", clock.when(each.atHours()), each.says())));
        session.hints().stream()
                .reduce((first, last) -> last)
                .ifPresent(hint -> lines.add(dress.text("told.hint", hint)));
        return lines;
    }

    private Optional<String> explained(PracticeSession session, SessionStep.Answer given) {
        return session.scenario().coaching().questions().stream()
                .filter(question -> question.name().equals(given.question()))
                .filter(question -> !question.why().isBlank())
                .findFirst()
                .map(question -> {
                    if (question.right() == 0 || given.choice() == 0) {
                        return dress.text("told.answer", question.ask(), question.why());
                    }
                    String right = question.choices().get(question.right() - 1);
                    return dress.text(
                            given.choice() == question.right() ? "told.right" : "told.notQuite", right, question.why());
                });
    }

    @Override
    public void dress(Dress other) {
        dress = other;
        paper(other.palette());
        safety.setForeground(other.palette().muted());
    }
}
