package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.desk.PassingTime;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import javax.swing.Timer;

/**
 * Lets hours of the tank go by before the eyes, a day in six seconds, so that it is seen what answers at once and what takes its
 * time. By the wall's clock, however quick the machine is. Event thread only.
 */
public final class Passage {
    private static final int TICK_MS = 50;
    private static final double MS_PER_HOUR = 250;
    private static final double SHORTEST_MS = 1200;
    private static final double LONGEST_MS = 7500;

    private final Timer timer = new Timer(TICK_MS, e -> tick());
    private PassingTime clock;
    private Optional<Instant> until = Optional.empty();
    private Instant from;
    private Instant shown;
    private boolean steps;
    private double hoursPerMs;
    private long startedNanos;
    private Runnable end = () -> {};

    /**
     * Begins; one that runs is skipped first.
     *
     * @param time how much goes by; empty for until the foam has settled
     * @param then done once it is over
     */
    public void play(PassingTime other, Optional<Duration> time, Runnable then) {
        skip();
        clock = other;
        from = other.now();
        shown = from;
        until = time.map(from::plus);
        double hours = time.map(each -> each.toMillis() / 3.6e6).orElse(24.0);
        hoursPerMs = hours / Math.max(SHORTEST_MS, Math.min(LONGEST_MS, hours * MS_PER_HOUR));
        end = then;
        startedNanos = System.nanoTime();
        timer.start();
    }

    /** Whether time is going by. */
    public boolean runs() {
        return timer.isRunning();
    }

    private void tick() {
        double elapsedMs = (System.nanoTime() - startedNanos) / 1e6;
        Instant reached = from.plusMillis((long) (elapsedMs * hoursPerMs * 3.6e6));
        boolean over = until.map(each -> !reached.isBefore(each)).orElse(elapsedMs >= LONGEST_MS || clock.settled());
        if (over) {
            skip();
        } else if (reached.isAfter(clock.now())) {
            steps = true;
            clock.run(Duration.between(clock.now(), reached));
            steps = false;
            shown = clock.now();
        }
    }

    /** Ends it where somebody else has set the clock meanwhile. */
    void watch() {
        if (runs() && !steps && !clock.now().equals(shown)) {
            cut();
        }
    }

    /** The rest at once. */
    public void skip() {
        if (runs()) {
            timer.stop();
            finish(clock, until.map(each -> Duration.between(clock.now(), each)));
            end.run();
        }
    }

    /** All of it at once. */
    static void finish(PassingTime clock, Optional<Duration> time) {
        if (time.isEmpty()) {
            clock.runUntilSettled();
        } else if (!time.get().isNegative()) {
            clock.run(time.get());
        }
    }

    /** Ends it where it is. */
    public void cut() {
        timer.stop();
    }
}
