package io.github.weirwise.demo.practice;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Theme;
import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.practice.Debrief;
import io.github.weirwise.practice.Guidance;
import io.github.weirwise.practice.Hands;
import io.github.weirwise.practice.Outcome;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.SessionOptions;
import io.github.weirwise.practice.SessionRecord;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.report.Phrase;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JSlider;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import org.junit.jupiter.api.Test;

/** The trainee says before they act, judges before they are told, and a trainer can stop, tell, go back and branch. */
class PracticePagesTest {
    private final Map<String, String> saved = new HashMap<>();
    private final List<Phrase> refusals = new ArrayList<>();
    private PracticeDesk desk;
    private PracticePages pages;
    private JPanel panel;

    private void begin() {
        Theme.install(Dress.USUAL.palette());
        desk = new PracticeDesk(Background.AT_ONCE);
        desk.onRefusal(refusals::add);
        pages = new PracticePages(desk, () -> {}, (name, text) -> saved.put(name, text.get()), Dress.USUAL);
        pages.build(() -> {}, () -> {});
        pages.offer(List.of(ScenarioJson.builtIn("first-steps")));
        panel = (JPanel) pages.panel();
        press(panel, "choose.begin");
        passQuestions();
    }

    private void passQuestions() {
        while (!desk.moment().orElseThrow().session().questions().isEmpty()) {
            press(panel, "question.pass");
        }
    }

    private int acts() {
        return (int) desk.moment().orElseThrow().session().steps().stream()
                .filter(SessionStep.Do.class::isInstance)
                .count();
    }

    private TrainerPanel trainer(Dress dress) {
        return new TrainerPanel(
                desk,
                List.of(ScenarioJson.builtIn("slow-drying")),
                new TrainerPanel.Deeds() {
                    @Override
                    public void session(Consumer<SessionRecord> then) {
                        then.accept(PracticeSession.begin(
                                        ScenarioJson.builtIn("slow-drying"),
                                        SessionOptions.DEFAULT.withTrainee("From a file"))
                                .toRecord());
                    }
                },
                (name, text) -> saved.put(name, text.get()),
                dress);
    }

    private static void press(JPanel in, String name) {
        Parts.named(in, name, JButton.class).doClick();
    }

    private void pick(String name, int index) {
        Parts.named(panel, name, JComboBox.class).setSelectedIndex(index);
    }

    private boolean isOn(String name) {
        return Parts.named(panel, name, JButton.class).isEnabled();
    }

    private PracticeSession played(String trainee, Hands hands) {
        desk.begin(ScenarioJson.builtIn("first-steps"), SessionOptions.DEFAULT.withTrainee(trainee));
        PracticeSession end = hands.play(desk.moment().orElseThrow().session(), () -> false);
        desk.again(Moment.of(end));
        desk.leave();
        return end;
    }

    private Guidance nextHelp(String trainee) {
        desk.begin(ScenarioJson.builtIn("first-steps"), SessionOptions.DEFAULT.withTrainee(trainee));
        return desk.moment().orElseThrow().session().guidance();
    }

    @Test
    void helpFadesWithEachScenarioThatIsSolvedAndForThatTraineeOnly() {
        desk = new PracticeDesk(Background.AT_ONCE);
        Guidance own = ScenarioJson.builtIn("first-steps").coaching().guidance();
        PracticeSession solved = played("Ada", Hands.ADVISER);
        assertThat(Outcome.of(solved).solved()).isTrue();
        assertThat(nextHelp("Ada")).isEqualTo(Debrief.of(solved).nextGuidance()).isNotEqualTo(own);
        assertThat(nextHelp("Ben")).isEqualTo(own);
        played("Ada", Hands.ADVISER);
        assertThat(nextHelp("Ada")).isEqualTo(Guidance.NONE);
        assertThat(desk.moment().orElseThrow().session().hints()).isEmpty();
        played("Ada", Hands.NOTHING);
        assertThat(nextHelp("Ada")).as("who fails is helped again").isNotEqualTo(Guidance.NONE);
    }

    @Test
    void nothingIsDoneBeforeItWasSaidWhatWillFollow() {
        Parts.onEvents(() -> {
            begin();
            double mark = desk.moment().orElseThrow().session().markMm();
            assertThat(isOn("act.do")).isFalse();
            pick("predict.level", 3);
            assertThat(isOn("act.do")).isFalse();
            pick("predict.foam", 3);
            assertThat(isOn("act.do")).isTrue();
            press(panel, "act.do");
            assertThat(desk.moment().orElseThrow().session().markMm()).isEqualTo(mark + 2);
            assertThat(isOn("act.do"))
                    .as("the next act wants its own prediction")
                    .isFalse();
            return null;
        });
    }

    @Test
    void theClockStandsUntilAQuestionIsAnsweredAndThenItsReasonIsTold() {
        Parts.onEvents(() -> {
            Theme.install(Dress.USUAL.palette());
            desk = new PracticeDesk(Background.AT_ONCE);
            desk.onRefusal(refusals::add);
            pages = new PracticePages(desk, () -> {}, (name, text) -> saved.put(name, text.get()), Dress.USUAL);
            pages.build(() -> {}, () -> {});
            pages.offer(List.of(ScenarioJson.builtIn("first-steps")));
            panel = (JPanel) pages.panel();
            press(panel, "choose.begin");
            var question = desk.moment().orElseThrow().session().questions().get(0);
            assertThat(Parts.named(panel, "question", JTextArea.class).getText())
                    .isEqualTo(question.ask());
            assertThat(Parts.named(panel, "page.look", JToggleButton.class).isEnabled())
                    .as("nothing else while a question is open")
                    .isFalse();
            assertThat(Parts.named(panel, "case.goal", JTextArea.class).getText())
                    .startsWith("Goal:");
            assertThat(Parts.named(panel, "case.safety", JTextArea.class).getText())
                    .contains("Unplug");
            Parts.named(panel, "question.choice." + question.right(), JRadioButton.class)
                    .setSelected(true);
            press(panel, "question.answer");
            assertThat(Parts.named(panel, "told", JTextArea.class).getText()).contains(question.why());
            return null;
        });
    }

    /** Whoever is asked what the matter is can still read what was seen. */
    @Test
    void theViewIsAskedForBesideWhatWasReadLast() {
        Parts.onEvents(() -> {
            begin();
            press(panel, "look.round");
            String seen = Parts.named(panel, "view.seen", JTextArea.class).getText();
            assertThat(seen).startsWith("Newest, Monday 08:06").contains("over the funnel base", "mL in");
            return null;
        });
    }

    @Test
    void whoHasGivenAViewThatWasAskedForGoesOnToPredictAndAct() {
        Parts.onEvents(() -> {
            begin();
            desk.begin(ScenarioJson.builtIn("slow-drying"), SessionOptions.DEFAULT);
            press(panel, "look.round");
            assertThat(desk.moment().orElseThrow().session().questions()).isNotEmpty();
            Parts.named(panel, "view.AIR_LINE_RESTRICTED", JSpinner.class).setValue(100);
            press(panel, "view.give");
            assertThat(Parts.named(panel, "page.act", JToggleButton.class).isSelected())
                    .isTrue();
            return null;
        });
    }

    @Test
    void whatWasAskedAndAnsweredIsToldInWords() {
        StepWords words = new StepWords();
        Function<SessionStep, String> told = step -> Dress.USUAL.words().say(words.of(step));
        assertThat(told.apply(new SessionStep.Ask("What do you expect?")))
                .isEqualTo("the trainer asked: What do you expect?");
        assertThat(told.apply(new SessionStep.Answer("trainer-1", 0, "less"))).isEqualTo("answered: less");
        assertThat(told.apply(new SessionStep.Answer("trainer-1", 0, ""))).isEqualTo("skipped the question");
        assertThat(told.apply(new SessionStep.Answer("funnel", 2, ""))).contains("choice 2");
    }

    @Test
    void aSecondChangeInsideTheWaitAsksForAReason() {
        Parts.onEvents(() -> {
            begin();
            for (String reason : new String[] {"", "", "the cup is still dry"}) {
                pick("predict.level", 3);
                pick("predict.foam", 3);
                Parts.named(panel, "act.reason", JTextField.class).setText(reason);
                press(panel, "act.do");
                passQuestions();
            }
            assertThat(refusals).hasSize(1);
            assertThat(refusals.get(0).key()).isEqualTo("practice.refused.reason");
            assertThat(acts()).isEqualTo(2);
            return null;
        });
    }

    @Test
    void theAdvisersViewIsShutUntilTheTraineeHasGivenOne() {
        Parts.onEvents(() -> {
            begin();
            press(panel, "look.round");
            passQuestions();
            assertThat(isOn("advice.open")).isFalse();
            assertThat(isOn("view.give")).isFalse();
            Parts.named(panel, "view.WEIR_TOO_LOW", JSpinner.class).setValue(60);
            assertThat(isOn("view.give")).as("60 % are not all").isFalse();
            Parts.named(panel, "view.NOTHING_WRONG", JSpinner.class).setValue(40);
            assertThat(isOn("view.give")).isTrue();
            press(panel, "view.give");
            assertThat(desk.moment().orElseThrow().advice()).isEmpty();
            press(panel, "advice.open");
            assertThat(desk.moment().orElseThrow().advice()).isPresent();
            return null;
        });
    }

    @Test
    void thePictureShowsNoFiguresAndAMoveInItIsAPlan() {
        Parts.onEvents(() -> {
            begin();
            assertThat(pages.scene().orElseThrow().figures()).isFalse();
            double mark = desk.moment().orElseThrow().session().markMm();
            pages.plan(mark - 3);
            assertThat(Parts.named(panel, "act.by", JTextField.class).getText()).isEqualTo("-3");
            assertThat(desk.moment().orElseThrow().session().markMm()).isEqualTo(mark);
            return null;
        });
    }

    @Test
    void theTrainerStopsTellsGoesBackAndBranches() {
        Parts.onEvents(() -> {
            begin();
            TrainerPanel trainer = trainer(Dress.USUAL);
            trainer.refresh();
            Parts.named(trainer, "trainer.page.work", JToggleButton.class).doClick(0);
            desk.perform(new SessionStep.Hold(true));
            assertThat(Parts.named(trainer, "trainer.hour", JButton.class).isEnabled())
                    .isFalse();
            desk.perform(new SessionStep.Hold(false));
            press(trainer, "trainer.runOn");
            Parts.named(trainer, "trainer.says", JTextField.class).setText("Somebody fed a lot.");
            press(trainer, "trainer.happen");
            Moment far = desk.moment().orElseThrow();
            assertThat(far.session().messages())
                    .extracting(io.github.weirwise.practice.Message::says)
                    .contains("Somebody fed a lot.");
            int steps = far.session().steps().size();
            desk.rewindTo(1);
            assertThat(desk.moment().orElseThrow().session().steps()).hasSize(1);
            assertThat(desk.branches()).containsExactly(far);
            Parts.named(trainer, "steps.branches", JComboBox.class).setSelectedIndex(1);
            press(trainer, "steps.change");
            assertThat(desk.moment().orElseThrow().session().steps()).hasSize(steps);
            return null;
        });
    }

    @Test
    void inTheDebriefTheTraineeSpeaksFirstAndCanCarryOnFromADecision() {
        Parts.onEvents(() -> {
            begin();
            press(panel, "look.round");
            passQuestions();
            pick("predict.level", 3);
            pick("predict.foam", 3);
            press(panel, "act.do");
            passQuestions();
            press(panel, "session.runOn");
            assertThat(Parts.named(panel, "debrief.own.1", JTextArea.class).isEditable())
                    .isTrue();
            press(panel, "debrief.show");
            assertThat(Parts.named(panel, "debrief.short", JTextArea.class).getText())
                    .contains("1. ", "4. ")
                    .doesNotContain("{");
            press(panel, "debrief.save");
            press(panel, "debrief.keep");
            assertThat(ScenarioJson.readSession(saved.get("session.json")))
                    .isEqualTo(desk.moment().orElseThrow().session().toRecord());
            JPanel replay = (JPanel) pages.controls();
            double end = pages.scene().orElseThrow().settings().weirCrestMm();
            Parts.named(replay, "replay.time", JSlider.class).setValue(0);
            assertThat(pages.scene().orElseThrow().settings().weirCrestMm())
                    .as("the picture shows the crest of then")
                    .isEqualTo(end - 2);
            Parts.named(panel, "debrief.more", JToggleButton.class).doClick();
            JList<?> lines = Parts.named(panel, "debrief.list", JList.class);
            int decision = -1;
            for (int i = 0; i < lines.getModel().getSize(); i++) {
                lines.setSelectedIndex(i);
                if (isOn("debrief.carryOn")) {
                    decision = i;
                    break;
                }
            }
            assertThat(saved.get("debrief.html")).startsWith("<!DOCTYPE html>");
            assertThat(decision).as("a line with a decision").isPositive();
            int steps = desk.moment().orElseThrow().session().steps().size();
            press(panel, "debrief.carryOn");
            assertThat(desk.moment().orElseThrow().session().steps().size()).isLessThan(steps);
            assertThat(desk.branches()).hasSize(1);
            return null;
        });
    }

    @Test
    void everyIncidentCanHappen() {
        Parts.onEvents(() -> {
            begin();
            int before = desk.moment().orElseThrow().session().steps().size();
            for (Incident each : Incident.values()) {
                var session = desk.moment().orElseThrow().session();
                desk.perform(new SessionStep.Inject(each.at(session.hours(), session), ""));
                desk.perform(new SessionStep.Wait(30));
            }
            assertThat(refusals).isEmpty();
            assertThat(desk.moment().orElseThrow().session().steps()).hasSize(before + 2 * Incident.values().length);
            return null;
        });
    }

    @Test
    void whoMeasuresTheCupSeesItEmpty() {
        begin();
        press(panel, "look.round");
        assertThat(pages.scene().orElseThrow().collected().ml()).isZero();
    }

    @Test
    void aWaitGoesByBeforeTheEyesAndMayBeSkipped() {
        begin();
        press(panel, "look.round");
        passQuestions();
        pages.moves(() -> true);
        double before = pages.scene().orElseThrow().collected().ml();
        press(panel, "session.runOn");
        JPanel below = (JPanel) pages.controls();
        JButton skip = Parts.named(below, "clock.skip", JButton.class);
        assertThat(skip.isVisible()).isTrue();
        assertThat(pages.scene().orElseThrow().collected().ml())
                .as("the cup fills as one watches")
                .isCloseTo(before, org.assertj.core.data.Offset.offset(5.0));
        skip.doClick(0);
        assertThat(skip.isVisible()).isFalse();
        assertThat(pages.scene()).contains(desk.moment().orElseThrow().scene());
        assertThat(pages.scene().orElseThrow().collected().ml()).isGreaterThan(before + 20);
    }

    @Test
    void whenTimeIsUpTheDebriefIsOpenAndTheNextSessionBeginsAfresh() {
        begin();
        while (!desk.moment().orElseThrow().session().over()) {
            press(panel, "session.runOn");
            passQuestions();
        }
        assertThat(Parts.named(panel, "page.debrief", JToggleButton.class).isSelected())
                .isTrue();
        Parts.named(panel, "debrief.own.1", JTextArea.class).setText("Raise it.");
        desk.begin(ScenarioJson.builtIn("slow-drying"), SessionOptions.DEFAULT);
        passQuestions();
        assertThat(Parts.named(panel, "page.look", JToggleButton.class).isSelected())
                .isTrue();
        assertThat(Parts.named(panel, "debrief.own.1", JTextArea.class).getText())
                .isEmpty();
    }
}
