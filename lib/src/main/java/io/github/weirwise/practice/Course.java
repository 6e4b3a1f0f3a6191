package io.github.weirwise.practice;

import java.util.List;

/** Figures read off a course. */
final class Course {
    private Course() {}

    /** Mean of what the foam gave between two hours, whether the cup had room or not, mL/day. */
    static double amountBetween(List<TrackPoint> track, double from, double until) {
        double sum = 0;
        double hours = 0;
        TrackPoint last = at(track, from);
        for (TrackPoint each : track) {
            if (each.hours() > last.hours() && each.hours() <= until + 1e-9) {
                double step = each.hours() - last.hours();
                sum += step * 0.5 * (each.skimmateMlPerDay() + last.skimmateMlPerDay());
                hours += step;
                last = each;
            }
        }
        return hours > 0.5 ? sum / hours : last.skimmateMlPerDay();
    }

    /** The last point at or before an hour, or the first one. */
    static TrackPoint at(List<TrackPoint> track, double hours) {
        int low = 0;
        int high = track.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (track.get(middle).hours() <= hours + 1e-9) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return track.get(low);
    }
}
