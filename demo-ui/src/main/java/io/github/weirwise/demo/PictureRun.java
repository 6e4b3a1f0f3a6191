package io.github.weirwise.demo;

import io.github.weirwise.advice.Step;
import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Theme;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.window.Asking;
import io.github.weirwise.demo.window.MainPanel;
import io.github.weirwise.demo.window.WindowPicture;
import java.awt.EventQueue;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;

/** Writes a picture of the window's content; needs no display. */
final class PictureRun {
    private static final int WIDTH = 1200;
    private static final int HEIGHT = 800;
    private static final int MOST_LOOKS = 3;

    private final Adviser adviser;
    private final Words words;
    private final PrintStream err;
    private BufferedImage image;

    PictureRun(Adviser adviser, Words words, PrintStream err) {
        this.adviser = adviser;
        this.words = words;
        this.err = err;
    }

    int run(Options options) {
        Path file = options.picture().orElseThrow();
        try {
            EventQueue.invokeAndWait(() -> image = paint(options));
            WindowPicture.write(image, file);
            return Demo.DONE;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Demo.FAILED;
        } catch (IOException | InvocationTargetException e) {
            err.println(words.of("picture.failed", file.toString(), String.valueOf(e.getMessage())));
            return Demo.FAILED;
        }
    }

    private static boolean asksForALook(Desk desk) {
        return desk.advice().map(advice -> advice.step() instanceof Step.Look).orElse(false);
    }

    private BufferedImage paint(Options options) {
        Dress dress = Front.dress(options);
        Theme.install(dress.palette());
        TankDesk desk = Front.desk();
        MainPanel content = new MainPanel(() -> desk, adviser, Background.AT_ONCE, Asking.NOBODY, dress);
        content.choose("use.tune");
        content.ask();
        for (int looks = 0; looks < MOST_LOOKS && asksForALook(desk); looks++) {
            desk.takeStep();
        }
        return WindowPicture.of(content, WIDTH, HEIGHT, options.scale());
    }
}
