package io.github.weirwise.demo;

import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Theme;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.picture.UnitPages;
import io.github.weirwise.demo.practice.PracticeDesk;
import io.github.weirwise.demo.practice.TrainerPanel;
import io.github.weirwise.demo.window.Asking;
import io.github.weirwise.demo.window.MainPanel;
import io.github.weirwise.demo.window.WindowPicture;
import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.practice.Look;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.SessionOptions;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.UnitSystem;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.image.BufferedImage;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Writes a picture of every screen into a folder; needs no display. */
final class ScreensRun {
    private static final String TRAINER = "trainer";

    /** Every screen, in the order in which docs/screens.md tells of them. */
    static final List<Screen> SCREENS = List.of(
            Screen.of("start", "use.start"),
            Screen.of("try", "use.try", "lesson.AIR", "technician"),
            Screen.of("tune", "use.tune"),
            Screen.of("tune-do", "use.tune", "read.simulate", "read.note"),
            Screen.of("tune-dark", "use.tune", "read.more").inTheDark(),
            Screen.of("tune-sums", "use.tune", "read.simulate", "read.note", "round.page.sums"),
            Screen.of(
                    "tune-score",
                    "use.tune",
                    "read.simulate",
                    "read.note",
                    "do.done",
                    "leave.runOn",
                    "read.simulate",
                    "read.note",
                    "do.done",
                    "leave.runOn",
                    "read.simulate",
                    "round.page.score"),
            Screen.of("tune-learn", "use.tune", "round.page.learn", "learn.plan")
                    .small(),
            Screen.of("tune-journal", "use.tune", "read.simulate", "round.page.journal")
                    .small(),
            Screen.of("tune-us", "use.tune", "read.simulate", "round.page.days", "days.asTable")
                    .inUsUnits(),
            Screen.of("practise-choose", "use.practise", "choose.teaches"),
            Screen.of("practise-look", "use.practise", "choose.begin", "question.pass", "look.round", "question.pass")
                    .small(),
            Screen.of(
                    "practise-act",
                    "use.practise",
                    "choose.begin",
                    "question.pass",
                    "look.round",
                    "question.pass",
                    "page.act"),
            Screen.of(
                            "practise-view",
                            "use.practise",
                            "choose.begin",
                            "question.pass",
                            "look.round",
                            "question.pass",
                            "page.view")
                    .inTheDark(),
            Screen.of(
                    "practise-advice",
                    "use.practise",
                    "choose.begin",
                    "question.pass",
                    "look.round",
                    "question.pass",
                    "page.advice"),
            Screen.of(
                    "practise-log",
                    "use.practise",
                    "choose.begin",
                    "question.pass",
                    "look.round",
                    "question.pass",
                    "session.runOn",
                    "look.round",
                    "page.log"),
            Screen.of(
                    "practise-debrief",
                    "use.practise",
                    "choose.begin",
                    "question.pass",
                    "look.round",
                    "question.pass",
                    "session.runOn",
                    "page.debrief",
                    "debrief.show"),
            Screen.of(
                            "practise-debrief-all",
                            "use.practise",
                            "choose.begin",
                            "question.pass",
                            "look.round",
                            "question.pass",
                            "session.runOn",
                            "page.debrief",
                            "debrief.show",
                            "debrief.more")
                    .small()
                    .inTheDark(),
            new Screen("trainer", TRAINER, List.of("trainer.page.work"), 760, 640, false, false),
            new Screen("trainer-lesson", TRAINER, List.of("trainer.page.lesson"), 760, 640, false, false),
            new Screen("trainer-group", TRAINER, List.of("trainer.page.group"), 760, 640, true, false),
            Screen.of("care-fit", "use.care"),
            Screen.of("care-fit-small", "use.care").small(),
            Screen.of("care-own", "use.care", "care.own"),
            Screen.of("care-own-small", "use.care", "care.own").small().inUsUnits(),
            Screen.of("care-start", "use.care", "care.start").inTheDark());

    private final Adviser adviser;
    private final PrintStream out;

    ScreensRun(Adviser adviser, PrintStream out) {
        this.adviser = adviser;
        this.out = out;
    }

    void run(Path folder) throws Exception {
        Map<String, Supplier<BufferedImage>> pictures = new LinkedHashMap<>();
        SCREENS.forEach(screen -> pictures.put(screen.name(), () -> paint(screen, 1)));
        pictures.put("unit", () -> UnitPages.unit(Dress.USUAL, 2));
        pictures.put("foam", () -> UnitPages.foam(Dress.USUAL, 1));
        for (Map.Entry<String, Supplier<BufferedImage>> each : pictures.entrySet()) {
            BufferedImage[] image = new BufferedImage[1];
            EventQueue.invokeAndWait(() -> image[0] = each.getValue().get());
            WindowPicture.write(image[0], folder.resolve(each.getKey() + ".png"));
        }
        out.println("result: pictures=" + pictures.size());
    }

    private static Container trainer(Dress dress) {
        PracticeDesk desk = new PracticeDesk(Background.AT_ONCE);
        TrainerPanel content = new TrainerPanel(
                desk,
                ScenarioJson.BUILT_IN.stream().map(ScenarioJson::builtIn).toList(),
                new TrainerPanel.Deeds() {},
                (name, text) -> {},
                dress);
        desk.begin(ScreensRun.scenario(), SessionOptions.DEFAULT);
        PracticeSession begun = desk.moment().orElseThrow().session();
        begun.questions().forEach(each -> desk.perform(new SessionStep.Answer(each.name(), 0, "")));
        desk.perform(new SessionStep.LookAt(Look.ROUND));
        desk.perform(new SessionStep.Say(Words.ENGLISH.of("trainer.incident.FED_HEAVILY")));
        return content;
    }

    private static Scenario scenario() {
        return ScenarioJson.builtIn("slow-drying");
    }

    private BufferedImage paint(Screen screen, double scale) {
        PhraseBook book = new PhraseBook(
                Words.ENGLISH.book().locale(), screen.us() ? UnitSystem.US_CUSTOMARY : UnitSystem.METRIC);
        Dress dress = new Dress(new Words(book), Palette.of(screen.dark()));
        return WindowPicture.of(content(screen, dress), screen.width(), screen.height(), scale);
    }

    /** A screen in words and colours, with its buttons pressed. */
    Container content(Screen screen, Dress dress) {
        Theme.install(dress.palette());
        Container content;
        if (screen.use().equals(TRAINER)) {
            content = trainer(dress);
        } else {
            MainPanel panel = new MainPanel(Front::desk, adviser, Background.AT_ONCE, Asking.NOBODY, dress);
            panel.choose(screen.use());
            content = panel;
        }
        WindowPicture.of(content, screen.width(), screen.height(), 1);
        screen.presses().forEach(name -> Screen.press(content, name));
        return content;
    }
}
