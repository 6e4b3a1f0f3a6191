package io.github.weirwise.demo.chart;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Range;
import java.util.List;

/**
 * Three lanes of one practice session on one time axis: what was done, what came against what was said, what others would have done.
 *
 * @param own the trainee's lane
 * @param sound the adviser's lane on the same tank
 * @param nothing the lane of doing nothing
 * @param said what the trainee said would come
 * @param bandMlPerDay wanted amounts
 * @param atDays where the replay stands
 */
public record LaneData(Lane own, Lane sound, Lane nothing, List<Said> said, Range bandMlPerDay, double atDays) {
    /** A course with what was done on it. */
    public record Lane(Phrase who, List<Point> points, List<Mark> acts) {
        /** Copies the lists. */
        public Lane {
            points = List.copyOf(points);
            acts = List.copyOf(acts);
        }
    }

    /** One moment of a lane; days since the trainee came in. */
    public record Point(double days, double crestMm, double skimmateMlPerDay) {}

    /** Something done. */
    public record Mark(double days, Phrase what) {}

    /** An amount that was said to come, from the act until it can be judged. */
    public record Said(double fromDays, double untilDays, double skimmateMlPerDay) {}

    /** Copies the list. */
    public LaneData {
        said = List.copyOf(said);
    }

    /** The same with the replay at another moment. */
    public LaneData at(double days) {
        return new LaneData(own, sound, nothing, said, bandMlPerDay, days);
    }

    List<Lane> lanes() {
        return List.of(own, sound, nothing);
    }
}
