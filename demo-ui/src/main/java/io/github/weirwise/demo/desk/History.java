package io.github.weirwise.demo.desk;

import io.github.weirwise.demo.picture.CupFill;
import io.github.weirwise.practice.FreePlay;
import io.github.weirwise.tank.Stock;
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
    private CupFill cup = CupFill.EMPTY;

    /** The tank at one moment. */
    public record Point(Instant at, double submergenceMm, double skimmateMlPerDay, double weirCrestMm) {}

    /** Adds the moment; of moments close together only the newest is kept. */
    void note(FreePlay tank) {
        cup = cup.risenTo(tank.truth().of(Stock.CUP_ML), tank.cupPtCo());
        Point point = new Point(
                tank.now(),
                tank.rest().submergenceMm(),
                tank.truth().of(Stock.SKIMMATE_ML_PER_DAY),
                tank.truth().of(Stock.WEIR_CREST_MM));
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

    FreePlay run(FreePlay from, Duration time) {
        FreePlay tank = from;
        Instant until = from.now().plus(time);
        while (tank.now().isBefore(until)) {
            Duration left = Duration.between(tank.now(), until);
            tank = tank.run(left.compareTo(SPACING) < 0 ? left : SPACING);
            note(tank);
        }
        return tank;
    }

    FreePlay runUntilSettled(FreePlay from) {
        FreePlay tank = from;
        Instant latest = from.now().plus(LONGEST_SETTLING);
        while (!tank.settled() && tank.now().isBefore(latest)) {
            tank = run(tank, SPACING);
        }
        return tank;
    }

    /** What came into the cup, in its order. */
    CupFill cup() {
        return cup;
    }

    /** The points, oldest first, as a copy that nobody changes. */
    public List<Point> points() {
        return List.copyOf(points);
    }
}
