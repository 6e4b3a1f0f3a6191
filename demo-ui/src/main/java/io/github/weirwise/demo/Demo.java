package io.github.weirwise.demo;

import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.text.TuningRun;
import java.awt.AWTError;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Starts the demo: window, text or picture. Exit codes: 0 done, 2 bad option, 3 no display for a window. */
public final class Demo {
    /** All went well. */
    public static final int DONE = 0;
    /** The picture could not be written. */
    public static final int FAILED = 1;
    /** An option could not be understood. */
    public static final int BAD_OPTION = 2;
    /** A window was asked for and there is no display. */
    public static final int NO_DISPLAY = 3;
    /** The window is open and ends the program itself. */
    static final int STAYS_OPEN = -1;

    private Words words = Words.ENGLISH;
    private final PrintStream out;
    private final PrintStream err;
    private final Adviser adviser;

    Demo(PrintStream out, PrintStream err, Adviser adviser) {
        this.out = out;
        this.err = err;
        this.adviser = adviser;
    }

    /** The program. */
    public static void main(String[] args) {
        Demo demo = new Demo(utf8(System.out), utf8(System.err), Front.DOOR);
        int code = demo.run(List.of(args));
        if (code != STAYS_OPEN) {
            System.exit(code);
        }
    }

    private static PrintStream utf8(PrintStream stream) {
        return new PrintStream(stream, true, StandardCharsets.UTF_8);
    }

    int run(List<String> args) {
        Options options;
        try {
            options = Options.parse(args);
            words = options.words();
        } catch (Options.BadOption e) {
            err.println(words.of(e.key(), e.value()));
            err.println(words.of("options.list"));
            return BAD_OPTION;
        }
        return switch (options.kind()) {
            case HELP -> help();
            case TEXT -> text();
            case PICTURE -> new PictureRun(adviser, words, err).run(options);
            case WINDOW -> window(options);
            case BEST -> best(options);
        };
    }

    private int help() {
        out.println(words.of("options.list"));
        return DONE;
    }

    private int text() {
        new TuningRun(adviser, words, out::println).run();
        return DONE;
    }

    private int best(Options options) {
        if (hasDisplay()) {
            return window(options);
        }
        err.println(words.of("noDisplay.line1"));
        err.println(words.of("noDisplay.line2"));
        return text();
    }

    private int window(Options options) {
        if (!hasDisplay()) {
            err.println(words.of("noDisplay.window"));
            return NO_DISPLAY;
        }
        EventQueue.invokeLater(() -> Front.openWindow(adviser, options));
        return STAYS_OPEN;
    }

    /** Whether a window could be opened; found out without opening one. */
    static boolean hasDisplay() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getDefaultScreenDevice() != null;
        } catch (HeadlessException | AWTError | LinkageError e) {
            return false;
        }
    }
}
