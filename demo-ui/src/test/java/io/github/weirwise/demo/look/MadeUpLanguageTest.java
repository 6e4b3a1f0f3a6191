package io.github.weirwise.demo.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.github.weirwise.Weirwise;
import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.demo.ShownTexts;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.practice.PracticeDesk;
import io.github.weirwise.demo.practice.TrainerPanel;
import io.github.weirwise.demo.start.UnitForm;
import io.github.weirwise.demo.window.Asking;
import io.github.weirwise.demo.window.MainPanel;
import io.github.weirwise.json.DocumentException;
import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.json.WeirwiseJson;
import io.github.weirwise.practice.Look;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.SessionOptions;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.report.Limit;
import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.UnitSystem;
import io.github.weirwise.setup.LanternQuaySites;
import io.github.weirwise.unit.LanternQuay;
import java.awt.Component;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import org.junit.jupiter.api.Test;

/** Every word in the window comes from a text: in a made-up language nothing is left in plain letters. */
class MadeUpLanguageTest {
    private static final List<Scenario> SCENARIOS =
            ScenarioJson.BUILT_IN.stream().map(ScenarioJson::builtIn).toList();
    private static final Pattern PLAIN_WORD = Pattern.compile("[A-Za-z]{2,}");

    @Test
    void noScreenShowsATextThatWasLeftUntranslated() throws Exception {
        Words words = MadeUpLanguage.words();
        Set<String> shown = new TreeSet<>();
        Parts.onEvents(() -> {
            Dress dress = new Dress(words, Palette.LIGHT);
            Theme.install(dress.palette());
            TankDesk desk = Sample.desk();
            MainPanel panel = new MainPanel(() -> desk, Weirwise::advise, Background.AT_ONCE, Asking.NOBODY, dress);
            for (Component button : Parts.all(panel)) {
                if (button.getName() != null && button.getName().startsWith("use.")) {
                    panel.choose(button.getName());
                    pressAll(panel);
                    shown.addAll(ShownTexts.of(panel));
                }
            }
            shown.addAll(ShownTexts.of(new UnitForm(dress)));
            shown.addAll(ShownTexts.of(trainer(dress)));
            return null;
        });
        List<String> left = shown.stream()
                .filter(text -> PLAIN_WORD.matcher(withoutNamesAndUnits(text)).find())
                .toList();
        assertThat(left).as("left untranslated").isEmpty();
        assertThat(shown).hasSizeGreaterThan(300);
    }

    /** What an error names, a member or what was found there, is data; all else is words. */
    @Test
    void noErrorIsLeftUntranslated() throws Exception {
        Words words = MadeUpLanguage.words();
        String sound = WeirwiseJson.writeInstallation(LanternQuaySites.schoolTank());
        List<String> spoilt = List.of(
                sound.replace("\"version\":2", "\"version\":3"),
                sound.substring(0, sound.length() / 2),
                "[" + sound + "]",
                "");
        for (String each : spoilt) {
            DocumentException e =
                    catchThrowableOfType(DocumentException.class, () -> WeirwiseJson.readInstallation(each));
            String said = (words.say(e.problemWords()) + words.say(e.tryThisWords()))
                    .replaceAll("headroomMm|mm|\"[^\"]*\"", "");
            assertThat(said).as(e.getMessage()).isNotBlank().doesNotContainPattern(PLAIN_WORD);
        }
        OutOfRangeException refused = catchThrowableOfType(
                OutOfRangeException.class,
                () -> new Limit("x", 0, 1, Unit.MILLIMETRE, Phrase.of("report.words", "")).check(2));
        assertThat(words.say(refused.problem())).doesNotContain("must be").contains("2 mm");
    }

    @Test
    void theLanguageKeepsPlacesAndKeys() {
        assertThat(MadeUpLanguage.translated("Do &it: {0}")).isEqualTo("\u0110\u00f4 &i\u0163: {0}");
    }

    private static TrainerPanel trainer(Dress dress) {
        PracticeDesk practice = new PracticeDesk(Background.AT_ONCE);
        TrainerPanel panel =
                new TrainerPanel(practice, SCENARIOS, new TrainerPanel.Deeds() {}, (name, text) -> {}, dress);
        practice.begin(SCENARIOS.get(0), SessionOptions.DEFAULT);
        practice.perform(new SessionStep.Say("1"));
        practice.perform(new SessionStep.LookAt(Look.ROUND));
        practice.perform(new SessionStep.Say("2"));
        practice.rewindTo(1);
        return panel;
    }

    /** Presses whatever unfolds or asks, so that what appears is read as well. */
    private static void pressAll(MainPanel panel) {
        for (String name : List.of(
                "read.more",
                "read.simulate",
                "read.note",
                "round.page.sums",
                "days.asTable",
                "response.asTable",
                "strip.asTable",
                "round.page.journal",
                "round.page.round",
                "do.done",
                "leave.runOn",
                "clock.day",
                "choose.teaches",
                "choose.begin",
                "question.pass",
                "look.round",
                "record.asTable",
                "session.runOn",
                "debrief.show")) {
            for (Component part : Parts.all(panel)) {
                if (name.equals(part.getName()) && part instanceof AbstractButton button) {
                    button.doClick();
                }
            }
        }
    }

    /** Names of units and tanks and what a scenario tells are data, symbols of units are the same everywhere. */
    private static String withoutNamesAndUnits(String text) {
        List<String> data = new ArrayList<>();
        LanternQuay.units().forEach(unit -> data.add(unit.name()));
        LanternQuaySites.all().forEach(site -> data.add(site.name()));
        Stream.of(Unit.values())
                .flatMap(unit -> Stream.of(UnitSystem.values()).map(unit::symbol))
                .filter(symbol -> !symbol.isEmpty())
                .forEach(data::add);
        for (Scenario each : SCENARIOS) {
            data.addAll(List.of(each.title(), each.teaches()));
            data.addAll(each.told());
            data.addAll(each.coaching().hints());
            each.coaching().questions().forEach(question -> {
                data.addAll(List.of(question.name(), question.ask(), question.why()));
                data.addAll(question.choices());
            });
            each.messages().forEach(message -> data.add(message.says()));
            each.faults().forEach(fault -> data.add(fault.words()));
        }
        data.sort(Comparator.comparingInt(String::length).reversed());
        String rest = text;
        for (String each : data) {
            rest = rest.replace(each, " ");
        }
        return rest;
    }
}
