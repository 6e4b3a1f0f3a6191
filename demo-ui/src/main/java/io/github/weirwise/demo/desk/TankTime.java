package io.github.weirwise.demo.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** A clock that can be made to run. */
public interface TankTime {
    Instant now();

    Instant start();

    /** Its last days, oldest first; never empty. */
    List<History.Point> points();

    /** Lets the time run. */
    void run(Duration time);

    /** Runs on until the foam has settled. */
    void runUntilSettled();

    /** Whether the foam has settled. */
    boolean settled();
}
