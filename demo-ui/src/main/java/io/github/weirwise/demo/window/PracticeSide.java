package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.practice.Moment;
import io.github.weirwise.demo.practice.PracticeDesk;
import io.github.weirwise.demo.practice.TrainerPanel;
import io.github.weirwise.json.DocumentException;
import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.RefusedStepException;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.SessionRecord;
import io.github.weirwise.report.Phrase;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Practice as the window sees it: its use, the trainer's second window, files of scenarios, and what is kept. */
final class PracticeSide {
    private final PracticeDesk desk;
    private final Background background;
    private final Asking asking;
    private final Papers papers;
    private final Saving saving;
    private final Consumer<Phrase> tell;
    private final Supplier<Dress> dress;
    private final Runnable turnHere;
    private Optional<PractiseUse> use = Optional.empty();
    private Optional<TrainerPanel> trainer = Optional.empty();
    private Optional<Unfinished> unfinished = Optional.empty();

    PracticeSide(
            Background background,
            Asking asking,
            Papers papers,
            Saving saving,
            Consumer<Phrase> tell,
            Supplier<Dress> dress,
            Runnable turnHere) {
        this.background = background;
        this.asking = asking;
        this.papers = papers;
        this.saving = saving;
        this.tell = tell;
        this.dress = dress;
        this.turnHere = turnHere;
        desk = new PracticeDesk(background);
        desk.onRefusal(tell);
        desk.onChange(this::changed);
    }

    PractiseUse use() {
        PractiseUse made =
                use.orElseGet(() -> new PractiseUse(desk, background, this::openScenario, saving, dress.get()));
        use = Optional.of(made);
        return made;
    }

    /** The trainer's desk in its own window; only the menu leads to it. */
    void openTrainer() {
        TrainerPanel panel = trainer.orElseGet(() -> new TrainerPanel(
                desk,
                ScenarioJson.BUILT_IN.stream().map(ScenarioJson::builtIn).toList(),
                deeds(),
                saving,
                dress.get()));
        trainer = Optional.of(panel);
        asking.showBeside(dress.get().text("trainer.window"), panel);
    }

    void dress(Dress other) {
        trainer.ifPresent(panel -> panel.dress(other));
    }

    private TrainerPanel.Deeds deeds() {
        return new TrainerPanel.Deeds() {
            @Override
            public void scenario(Consumer<Scenario> then) {
                papers.document(ScenarioJson::readScenario, "trouble.scenario", then, dress.get());
            }

            @Override
            public void session(Consumer<SessionRecord> then) {
                papers.document(ScenarioJson::readSession, "trouble.session", then, dress.get());
            }

            @Override
            public void begun() {
                turnHere.run();
            }
        };
    }

    private void openScenario() {
        papers.document(
                ScenarioJson::readScenario,
                "trouble.scenario",
                scenario -> use().pages().offer(List.of(scenario)),
                dress.get());
    }

    /** Keeps sessions from now on, and takes up the one that was left the last time. */
    void keep(Unfinished work) {
        unfinished = Optional.of(work);
        work.takeUp(Kept.Work.PRACTICE, PracticeSide::left, desk::again);
        work.keep(
                Kept.Work.PRACTICE,
                () -> desk.moment()
                        .map(Moment::session)
                        .filter(session -> !session.over() && !session.steps().isEmpty())
                        .map(PracticeSession::toRecord)
                        .map(record -> () -> ScenarioJson.writeSession(record)));
    }

    private void changed() {
        boolean atWork = desk.moment().filter(each -> !each.session().over()).isPresent();
        unfinished.ifPresent(work -> {
            if (atWork) {
                work.changed(Kept.Work.PRACTICE);
            } else {
                work.forget(Kept.Work.PRACTICE);
            }
        });
    }

    private static Optional<Moment> left(String document) {
        try {
            return Optional.of(Moment.of(PracticeSession.replay(ScenarioJson.readSession(document))));
        } catch (DocumentException | RefusedStepException e) {
            return Optional.empty();
        }
    }
}
