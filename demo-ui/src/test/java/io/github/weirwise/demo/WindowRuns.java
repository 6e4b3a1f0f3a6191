package io.github.weirwise.demo;

import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Theme;
import io.github.weirwise.demo.timing.LongRun;
import io.github.weirwise.demo.timing.TimingRun;
import io.github.weirwise.demo.window.Asking;
import io.github.weirwise.demo.window.MainPanel;
import io.github.weirwise.demo.window.MainWindow;
import java.awt.EventQueue;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/**
 * What is measured and painted of the window for the documents ({@code docs/commands.md}): {@code pictures FOLDER} paints every screen,
 * {@code timing} opens the window and uses it, {@code long} runs it for an hour at full speed.
 */
final class WindowRuns {
    private WindowRuns() {}

    public static void main(String[] words) throws Exception {
        System.setOut(new PrintStream(System.out, true, StandardCharsets.UTF_8));
        switch (words[0]) {
            case "pictures" -> new ScreensRun(Front.DOOR, System.out).run(Path.of(words[1]));
            case "timing" -> timing();
            case "long" -> longRun();
            default -> throw new IllegalArgumentException("pictures FOLDER, timing or long, got " + words[0]);
        }
        System.exit(0);
    }

    /** The window as it opens, but nothing of it is kept. */
    private static void timing() throws Exception {
        Options options = Options.parse(List.of());
        new TimingRun(
                        () -> (MainPanel) MainWindow.open(
                                        () -> Front.warm(Front.DOOR, options), Front.DOOR, Front.dress(options), true)
                                .getContentPane(),
                        System.out::println)
                .run();
    }

    private static void longRun() throws Exception {
        TankDesk desk = Front.desk();
        Options options = Options.parse(List.of());
        MainPanel[] panel = new MainPanel[1];
        Dress dress = Front.dress(options);
        EventQueue.invokeAndWait(() -> {
            Theme.install(dress.palette());
            panel[0] = new MainPanel(() -> desk, Front.DOOR, Background.AT_ONCE, Asking.NOBODY, dress);
        });
        System.out.println(new LongRun(panel[0], desk).run(LongRun.HOUR).line());
    }
}
