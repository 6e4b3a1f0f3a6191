package io.github.weirwise.demo.round;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.Weirwise;
import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.advice.Step;
import io.github.weirwise.care.CarePlan;
import io.github.weirwise.care.CareTask;
import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.desk.Cannot;
import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.desk.Forecast;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Theme;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.LanternQuay;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** One visit after another at an own unit: every step can be finished, and what was told is held against what came. */
class RoundPanelTest {
    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");

    @TempDir
    Path folder;

    private final Watch watch = new Watch();
    private final List<String> saved = new ArrayList<>();
    private FileDesk desk;
    private RoundPanel round;
    private Optional<Advice> next = Optional.empty();
    private boolean thinking;

    /** A clock that stands until it is set. */
    private static final class Watch extends Clock {
        private Instant now = NOON;

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    @BeforeEach
    void begin() throws IOException {
        Theme.install(Dress.USUAL.palette());
        var unit = LanternQuay.seahorseRoom();
        desk = FileDesk.create(folder.resolve("unit.jsonl"), unit, unit.ratedSettings(150), watch);
        open();
    }

    private void open() {
        round = Parts.onEvents(() ->
                new RoundPanel(desk, this::work, (name, text) -> saved.add(name + "\n" + text.get()), Dress.USUAL));
        Parts.onEvents(() -> {
            round.steps().forEach(Runnable::run);
            return null;
        });
        desk.onChange(round::refresh);
    }

    private void work() {
        if (thinking) {
            return;
        }
        desk.advised(next.orElseGet(() ->
                Weirwise.advise(desk.unit(), desk.told(), desk.journal(), desk.now(), Cannot.options(desk.journal()))));
    }

    private void press(String name) {
        Parts.onEvents(() -> {
            AbstractButton button = Parts.named(round, name, AbstractButton.class);
            assertThat(button.isEnabled() && inSight(button)).as(name).isTrue();
            button.doClick();
            return null;
        });
    }

    private boolean inSight(Component part) {
        for (Component each = part; each != round; each = each.getParent()) {
            if (!each.isVisible()) {
                return false;
            }
        }
        return true;
    }

    private void type(String box, String text) {
        Parts.onEvents(() -> {
            Parts.named(round, box, JTextField.class).setText(text);
            return null;
        });
    }

    private String text(String name) {
        return Parts.onEvents(() -> Parts.named(round, name, JTextArea.class).getText());
    }

    private Advice look(LookKind kind) {
        Advice any = Weirwise.advise(desk.unit(), desk.told(), desk.journal(), desk.now());
        return new Advice(
                new Step.Look(kind),
                any.what(),
                any.diagnosis(),
                any.expectation(),
                any.floodLookAt(),
                any.judgeAt(),
                any.why(),
                any.wouldChangeIt(),
                any.cautions());
    }

    private Advice move(double toMm) {
        Advice any = look(LookKind.FUNNEL_LEVEL);
        return new Advice(
                new Step.MoveWeir(4, toMm, false),
                any.what(),
                any.diagnosis(),
                any.expectation(),
                Optional.of(desk.now().plus(Duration.ofMinutes(20))),
                desk.now().plus(Duration.ofHours(24)),
                any.why(),
                any.wouldChangeIt(),
                any.cautions());
    }

    @Test
    void nothingIsDoneBeforeThereIsAStep() {
        next = Optional.of(move(desk.told().weirCrestMm() + 4));
        thinking = true;
        press("read.note");
        assertThat(isOn("do.done")).isFalse();
        thinking = false;
        Parts.onEvents(() -> {
            work();
            return null;
        });
        assertThat(isOn("do.done")).isTrue();
        press("do.done");
        assertThat(desk.stepTaken()).isTrue();
    }

    private boolean isOn(String name) {
        return Parts.onEvents(
                () -> Parts.named(round, name, AbstractButton.class).isEnabled());
    }

    @ParameterizedTest
    @EnumSource
    void everyLookThatCanBeAskedForCanBeFinished(LookKind kind) {
        next = Optional.of(look(kind));
        press("read.note");
        press("do.done");
        assertThat(desk.journal().entries()).as("nothing was seen yet").isEmpty();
        assertThat(text("do.said")).isNotBlank();
        Parts.onEvents(() -> {
            for (Component part : Parts.all(round)) {
                boolean here = inSight(part)
                        && part.getName() != null
                        && part.getName().startsWith("ask.");
                if (here && part instanceof JTextField box && box.getText().isBlank()) {
                    box.setText("10");
                } else if (here
                        && part instanceof AbstractButton button
                        && part.getName().split("\\.").length == 3) {
                    button.doClick();
                }
            }
            return null;
        });
        press("do.done");
        Reading seen = desk.journal().last(Reading.class).orElseThrow();
        assertThat(seen.observations()).hasSize(1);
        kind.part()
                .ifPresent(part -> assertThat(seen.find(Observation.Inspection.class)
                                .orElseThrow()
                                .part())
                        .isEqualTo(part));
    }

    @Test
    void whatCannotBeLookedAtIsNeverAskedForAgain() throws IOException {
        List<LookKind> asked = new ArrayList<>();
        press("read.note");
        while (desk.advice().orElseThrow().step() instanceof Step.Look look) {
            assertThat(asked).doesNotContain(look.what());
            asked.add(look.what());
            press("do.cannot");
        }
        assertThat(asked).isNotEmpty();
        assertThat(Cannot.in(FileDesk.open(desk.path(), watch).journal())).containsExactlyInAnyOrderElementsOf(asked);
    }

    @Test
    void aLookThatIsPutOffEndsTheVisitAndIsAskedForOnTheNext() throws IOException {
        next = Optional.of(look(LookKind.AIR_FLOW));
        press("read.note");
        press("do.later");
        assertThat(text("leave.until")).isEqualTo("Leave it until Thursday 12:00");
        assertThat(Cannot.in(FileDesk.open(desk.path(), watch).journal())).isEmpty();
        watch.now = NOON.plus(Duration.ofHours(24));
        desk = FileDesk.open(desk.path(), watch);
        open();
        press("read.note");
        assertThat(text("do.what"))
                .isEqualTo(Dress.USUAL.words().say(next.orElseThrow().what()));
    }

    @Test
    void whatWasToldIsHeldAgainstWhatCame() throws IOException {
        type("ask.FUNNEL_LEVEL", "12");
        next = Optional.of(move(154));
        press("read.note");
        press("do.done");
        assertThat(desk.journal().last(WeirMove.class).orElseThrow().toCrestMm())
                .isEqualTo(154);
        assertThat(text("leave.until")).isEqualTo("Leave it until Thursday 12:00");
        press("leave.calendar");
        assertThat(saved)
                .singleElement()
                .asString()
                .contains("BEGIN:VEVENT", "DTSTART:20261126T120000Z", "DTSTART:20261125T122000Z")
                .matches("(?s)(?:[^\r\n]{0,75}\r?\n)+");

        watch.now = NOON.plus(Duration.ofHours(24));
        desk = FileDesk.open(desk.path(), watch);
        open();
        Forecast told = Forecast.newest(desk.journal()).orElseThrow();
        assertThat(told.levelMm().low())
                .isCloseTo(
                        next.orElseThrow().expectation().submergenceMm().low(),
                        org.assertj.core.data.Offset.offset(0.051));
        RangeBar bar = Parts.named(round, "expected.level", RangeBar.class);
        assertThat(inSight(bar)).isTrue();
        assertThat(bar.describe()).endsWith("not read yet.");
        double above = Math.ceil(told.levelMm().high()) + 5;
        type("ask.FUNNEL_LEVEL", String.valueOf(above));
        assertThat(bar.describe()).endsWith("more than expected.");
        press("read.note");
        assertThat(bar.describe()).endsWith("more than expected.");
    }

    @Test
    void enterGoesOnAndEscapeGoesBack() {
        next = Optional.of(move(154));
        type("ask.FUNNEL_LEVEL", "12");
        key("ENTER");
        assertThat(desk.journal().all(Reading.class)).hasSize(1);
        key("ESCAPE");
        assertThat(inSight(Parts.named(round, "read.note", AbstractButton.class)))
                .isTrue();
        key("ENTER");
        key("ENTER");
        assertThat(desk.journal().last(WeirMove.class)).isPresent();
        assertThat(inSight(Parts.named(round, "leave.calendar", AbstractButton.class)))
                .isTrue();
        key("ENTER");
        assertThat(desk.journal().all(WeirMove.class)).as("done once").hasSize(1);
    }

    private void key(String stroke) {
        Parts.onEvents(() -> {
            Object name = round.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                    .get(javax.swing.KeyStroke.getKeyStroke(stroke));
            round.getActionMap().get(name).actionPerformed(new ActionEvent(round, ActionEvent.ACTION_PERFORMED, ""));
            return null;
        });
    }

    @Test
    void oneVisitFollowsAnotherWhileTheWindowStaysOpen() {
        next = Optional.of(move(154));
        press("read.note");
        press("do.done");
        watch.now = NOON.plus(Duration.ofHours(24));
        press("leave.again");
        type("ask.FUNNEL_LEVEL", "12");
        next = Optional.of(move(158));
        press("read.note");
        press("do.done");
        assertThat(desk.journal().all(WeirMove.class)).hasSize(2);
        assertThat(desk.settings().weirCrestMm()).isEqualTo(158);
    }

    @Test
    void theAdviserHearsOfUpkeepThatIsDoneAfterTheStep() {
        type("ask.FUNNEL_LEVEL", "12");
        next = Optional.of(move(154));
        press("read.note");
        press("do.done");
        next = Optional.of(move(158));
        press("upkeep.TEST_SWITCH");
        assertThat(desk.advice()).isEqualTo(next);
        press("do.done");
        assertThat(desk.settings().weirCrestMm()).isEqualTo(158);
    }

    @Test
    void upkeepThatIsNotDueYetCanBeNotedTooAndAllOfItGoesIntoACalendar() {
        type("ask.FUNNEL_LEVEL", "12");
        next = Optional.of(move(154));
        press("read.note");
        press("do.done");
        Parts.onEvents(() -> {
            Parts.named(round, "upkeep.all", JToggleButton.class).doClick();
            return null;
        });
        press("upkeep.WASH_NECK_AND_CUP");
        assertThat(CarePlan.of(desk.journal(), desk.now())
                        .item(CareTask.WASH_NECK_AND_CUP)
                        .lastDone())
                .contains(desk.now());
        press("upkeep.calendar");
        assertThat(saved).singleElement().asString().contains("BEGIN:VCALENDAR");
    }

    @Test
    void aStepThatIsTakenBackIsTakenBackWhole() {
        next = Optional.of(move(154));
        press("read.note");
        press("do.done");
        assertThat(desk.journal().entries()).hasSize(2);
        desk.undo();
        assertThat(desk.journal().entries()).isEmpty();
        assertThat(desk.settings().weirCrestMm()).isEqualTo(150);
    }

    @Test
    void whatIsTypedAndNotNotedComesBack() {
        type("ask.FUNNEL_LEVEL", "12.5");
        type("ask.CUP_VOLUME", "80");
        Map<String, String> kept = round.kept();
        open();
        round.again(kept);
        assertThat(text("read.said")).contains("not noted yet");
        type("ask.CUP_HOURS", "20");
        press("read.note");
        assertThat(desk.journal().last(Reading.class).orElseThrow().observations())
                .containsExactly(new Observation.FunnelLevel(12.5), new Observation.CupVolume(80, 20, false));
    }

    @Test
    void aNoteThatOnlyLooksLikeAForecastIsNone() {
        assertThat(Forecast.of(new io.github.weirwise.reading.Note(NOON, "Expected by noon: level 9 to 1 mm")))
                .isEmpty();
        assertThat(
                        Forecast.of(
                                new io.github.weirwise.reading.Note(
                                        NOON,
                                        "Expected by 2026-11-26T12:00:00Z: level 9.0 to 1.0 mm over the funnel base; 5.0 to 6.0 mL/day of skimmate")))
                .as("the range is upside down")
                .isEmpty();
    }
}
