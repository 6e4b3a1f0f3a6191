package io.github.weirwise.demo.chart;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Range;
import java.util.List;

/**
 * Courses of one tank under different hands, for a chart: amount against days since the trainee came in.
 *
 * @param lanes the courses, the trainee's first
 * @param bandMlPerDay what is wanted
 */
public record LaneData(List<Lane> lanes, Range bandMlPerDay) {
    /**
     * One course.
     *
     * @param who whose hands
     * @param points its points in order of time
     */
    public record Lane(Phrase who, List<Point> points) {
        /** Copies the list. */
        public Lane {
            points = List.copyOf(points);
        }
    }

    /** A moment of a course. */
    public record Point(double days, double submergenceMm, double skimmateMlPerDay) {}

    /** Copies the list. */
    public LaneData {
        lanes = List.copyOf(lanes);
    }
}
