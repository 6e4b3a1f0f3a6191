package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.desk.History;
import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.report.Range;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What the strip shows.
 *
 * @param points the tank's last days
 * @param seen readings
 * @param marks things done
 * @param bandMm wanted levels
 * @param bandMlPerDay wanted amounts
 * @param expected what the advice expects, if there is advice
 * @param clock tells its times; day 1 begins with its start
 */
public record StripData(
        List<History.Point> points,
        List<Seen> seen,
        List<Mark> marks,
        Range bandMm,
        Range bandMlPerDay,
        Optional<Expected> expected,
        Clock clock) {
    /** Copies the lists. */
    public StripData {
        points = List.copyOf(points);
        seen = List.copyOf(seen);
        marks = List.copyOf(marks);
    }

    /** A reading; NaN for what was not seen. */
    public record Seen(Instant at, double submergenceMm, double skimmateMlPerDay) {}

    /** Something done, with a short label. */
    public record Mark(Instant at, String label) {}

    /** What should be seen at a time. */
    public record Expected(Instant at, Range submergenceMm, Range skimmateMlPerDay) {}
}
