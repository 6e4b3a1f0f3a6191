package io.github.weirwise.demo.timing;

import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.window.MainPanel;
import io.github.weirwise.demo.window.WindowPicture;
import java.awt.EventQueue;
import java.lang.reflect.InvocationTargetException;
import java.time.Duration;
import java.util.Locale;

/**
 * An hour at full time compression (6 h of the tank a second, ten ticks a second) with everything in the window following, run
 * without the waiting and without a display; what is kept in memory is measured after a third and at the end.
 */
public final class LongRun {
    /** Ticks of an hour. */
    public static final int HOUR = 36_000;

    private static final Duration TICK = Duration.ofMinutes(36);
    private static final int PAINT_EVERY = 200;
    private static final int LOOK_EVERY = 40;
    private static final int WIDTH = 1200;
    private static final int HEIGHT = 800;
    private static final double MB = 1 << 20;

    private final MainPanel panel;
    private final TankDesk desk;

    /** The run of a window's content at work on an invented tank. */
    public LongRun(MainPanel panel, TankDesk desk) {
        this.panel = panel;
        this.desk = desk;
    }

    /**
     * What was measured.
     *
     * @param ticks how many
     * @param tankDays how long the tank lived
     * @param earlyMb memory in use after a third
     * @param lateMb memory in use at the end
     * @param journal entries in the journal, which is meant to grow
     */
    public record Measured(int ticks, double tankDays, double earlyMb, double lateMb, int journal) {
        /** The line for programs. */
        public String line() {
            return String.format(
                    Locale.ROOT,
                    "result: ticks=%d tankDays=%.0f earlyMb=%.1f lateMb=%.1f grownMb=%.1f journal=%d",
                    ticks,
                    tankDays,
                    earlyMb,
                    lateMb,
                    lateMb - earlyMb,
                    journal);
        }
    }

    /** Runs so many ticks; readings are taken and withdrawn, so that the journal stays as it was. */
    public Measured run(int ticks) throws InterruptedException, InvocationTargetException {
        long began = desk.now().getEpochSecond();
        double early = 0;
        for (int tick = 1; tick <= ticks; tick++) {
            int now = tick;
            EventQueue.invokeAndWait(() -> tick(now));
            if (tick == ticks / 3) {
                early = usedMb();
            }
        }
        double late = usedMb();
        double days = (desk.now().getEpochSecond() - began) / 86400.0;
        return new Measured(ticks, days, early, late, desk.journal().entries().size());
    }

    private void tick(int number) {
        desk.run(TICK);
        if (number % LOOK_EVERY == 0) {
            desk.look();
            desk.undo();
        }
        if (number % PAINT_EVERY == 0) {
            WindowPicture.of(panel, WIDTH, HEIGHT, 1);
        }
    }

    private static double usedMb() throws InterruptedException {
        Runtime runtime = Runtime.getRuntime();
        long least = Long.MAX_VALUE;
        for (int i = 0; i < 4; i++) {
            System.gc();
            Thread.sleep(60);
            least = Math.min(least, runtime.totalMemory() - runtime.freeMemory());
        }
        return least / MB;
    }
}
