package io.github.weirwise.demo.desk;

import java.time.Duration;
import java.time.Instant;

/** Time that goes by. */
public interface PassingTime {
    Instant now();

    /** Lets the time run. */
    void run(Duration time);

    /** Runs on until the foam has settled. */
    void runUntilSettled();

    /** Whether the foam has settled. */
    boolean settled();
}
