package io.github.weirwise.demo.window;

import io.github.weirwise.demo.picture.UnitPicture;
import javax.swing.Timer;

/** Keeps the bubbles rising while motion is on; no timer runs while it is off. */
final class Motion {
    private static final int FRAME_MS = 16;

    private final UnitPicture picture;
    private final Timer timer;
    private final long started = System.nanoTime();

    Motion(UnitPicture picture) {
        this.picture = picture;
        timer = new Timer(FRAME_MS, e -> tick());
        timer.setCoalesce(true);
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
        if (picture.isShowing()) {
            picture.animate((System.nanoTime() - started) / 1e9);
        }
    }
}
