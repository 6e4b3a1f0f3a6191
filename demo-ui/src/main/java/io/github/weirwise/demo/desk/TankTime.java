package io.github.weirwise.demo.desk;

import java.time.Instant;
import java.util.List;

/** A clock that can be made to run. */
public interface TankTime extends PassingTime {
    Instant start();

    /** Its last days, oldest first; never empty. */
    List<History.Point> points();
}
