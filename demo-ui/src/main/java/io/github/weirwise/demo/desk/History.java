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
    private static final Duration SPACING = Duration.ofMinutes(30);

    private static final Duration LONGEST_SETTLING = Duration.ofDays(10);
    private static final int MOST_POINTS = 600;

    private final Deque<Point> points = new ArrayDeque<>();

    /** The tank at one moment. */
    public record Point(Instant at, double submergenceMm, double skimmateMlPerDay, double weirCrestMm) {}

    /** Adds the moment; of moments close together only the newest is kept. */
    void note(TrainingTank tank) {
        Point point = new Point(
                tank.now(),
                tank.rest().submergenceMm(),
                tank.skimmateMlPerDay(),
                tank.settings().weirCrestMm());
        if (points.size() > 1 && isCloseToTheOneBeforeLast(point)) {
            points.removeLast();
        }
        points.addLast(point);
        if (points.size() > MOST_POINTS) {
            points.removeFirst();
        }
    }

    private boolean isCloseToTheOneBeforeLast(Point point) {
        Point last = points.removeLast();
        Point before = points.peekLast();
        points.addLast(last);
        boolean sameWeir = before.weirCrestMm() == point.weirCrestMm() && last.weirCrestMm() == point.weirCrestMm();
        return sameWeir && Duration.between(before.at(), point.at()).compareTo(SPACING) <= 0;
    }

    void run(TrainingTank tank, Duration time) {
        Duration left = time;
        while (left.compareTo(Duration.ZERO) > 0) {
            Duration part = left.compareTo(SPACING) < 0 ? left : SPACING;
            tank.run(part);
            note(tank);
            left = left.minus(part);
        }
    }

    void runUntilSettled(TrainingTank tank) {
        Instant latest = tank.now().plus(LONGEST_SETTLING);
        while (!tank.settled() && tank.now().isBefore(latest)) {
            run(tank, SPACING);
        }
    }

    /** The points, oldest first, as a copy that nobody changes. */
    public List<Point> points() {
        return List.copyOf(points);
    }
}
