package io.github.weirwise.demo.window;

import io.github.weirwise.demo.picture.UnitPicture;
import java.util.Optional;
import javax.swing.Timer;

/** Keeps the bubbles rising while motion is on; no timer runs while it is off. */
final class Motion {
    private static final int FRAME_MS = 16;

    private Optional<UnitPicture> picture = Optional.empty();
    private final Timer timer;
    private final long started = System.nanoTime();

    Motion() {
        timer = new Timer(FRAME_MS, e -> tick());
        timer.setCoalesce(true);
    }

    /** Moves this picture from now on. */
    void move(UnitPicture other) {
        picture = Optional.of(other);
    }

    void run(boolean on) {
        if (on) {
            timer.start();
        } else {
            timer.stop();
        }
    }

    boolean runs() {
        return timer.isRunning();
    }

    private void tick() {
        picture.filter(UnitPicture::isShowing).ifPresent(each -> each.animate((System.nanoTime() - started) / 1e9));
    }
}
