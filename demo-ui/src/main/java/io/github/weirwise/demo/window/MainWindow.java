package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Theme;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JFrame;
import javax.swing.SwingWorker;
import javax.swing.WindowConstants;

/** Puts the content into a window. Event thread only. */
public final class MainWindow {
    private static final Dimension SIZE = new Dimension(1200, 800);
    private static final Dimension LEAST = new Dimension(1024, 700);

    private MainWindow() {}

    /** Opens the window, keeps unfinished work in a folder, and takes up what was left there. */
    public static JFrame open(
            Supplier<TankDesk> desk,
            Supplier<TankDesk> untouched,
            Kept kept,
            Adviser adviser,
            Dress dress,
            boolean still) {
        JFrame frame = open(desk, adviser, dress, still);
        MainPanel content = (MainPanel) frame.getContentPane();
        content.keep(kept, untouched);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent e) {
                content.close();
            }
        });
        return frame;
    }

    /** Opens the window; nothing is kept when it closes. */
    public static JFrame open(Supplier<TankDesk> desk, Adviser adviser, Dress dress, boolean still) {
        Theme.install(dress.palette());
        TwoStepRepaints.install();
        JFrame frame = new JFrame(dress.text("window.name"));
        MainPanel content = new MainPanel(desk, adviser, worker(), new Dialogs(() -> frame), dress);
        frame.setDefaultCloseOperation(WindowConstants.EXIT_ON_CLOSE);
        frame.setContentPane(content);
        frame.setMinimumSize(LEAST);
        frame.setSize(within(GraphicsEnvironment.getLocalGraphicsEnvironment()
                .getMaximumWindowBounds()
                .getSize()));
        frame.setLocationByPlatform(true);
        frame.setVisible(true);
        content.setStill(still);
        return frame;
    }

    /** As large as is usual, or as the screen is when that is smaller. */
    static Dimension within(Dimension screen) {
        return new Dimension(Math.min(SIZE.width, screen.width), Math.min(SIZE.height, screen.height));
    }

    /** Works in the background while the event thread goes on. */
    static Background worker() {
        return new Background() {
            @Override
            public <T> void run(Supplier<T> work, Consumer<T> then) {
                new SwingWorker<T, Void>() {
                    @Override
                    protected T doInBackground() {
                        return work.get();
                    }

                    @Override
                    protected void done() {
                        try {
                            then.accept(get());
                        } catch (InterruptedException e) {
                            Thread.currentThread().interrupt();
                        } catch (java.util.concurrent.ExecutionException e) {
                            throw new IllegalStateException(e.getCause());
                        }
                    }
                }.execute();
            }

            @Override
            public void soon(Runnable piece) {
                EventQueue.invokeLater(piece);
            }
        };
    }
}
