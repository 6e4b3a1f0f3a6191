package io.github.weirwise.demo.desk;

import io.github.weirwise.demo.tank.TrainingTank;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** The tank's last days as points; old ones are dropped, so that it never grows past a bound. */
public final class History {
    /** Time between points. */
    public static final Duration SPACING = Duration.ofMinutes(30);

    private static final int MOST_POINTS = 1000;

    private final Deque<Point> points = new ArrayDeque<>();

    /** The tank at one moment. */
    public record Point(Instant at, double submergenceMm, double skimmateMlPerDay, double weirCrestMm) {}

    void note(TrainingTank tank) {
        points.addLast(new Point(
                tank.now(),
                tank.rest().submergenceMm(),
                tank.skimmateMlPerDay(),
                tank.settings().weirCrestMm()));
        if (points.size() > MOST_POINTS) {
            points.removeFirst();
        }
    }

    /** The points, oldest first, as a copy that nobody changes. */
    public List<Point> points() {
        return List.copyOf(points);
    }
}
