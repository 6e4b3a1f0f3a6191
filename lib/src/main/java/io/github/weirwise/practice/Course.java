package io.github.weirwise.practice;

import java.util.List;

/** Figures read off a course. */
final class Course {
    private Course() {}

    /** Mean amount between two hours by the skimmate that left, mL/day; the nearest point when nothing lies between. */
    static double amountBetween(List<TrackPoint> track, double from, double until) {
        TrackPoint first = at(track, from);
        TrackPoint last = at(track, until);
        double days = (last.hours() - first.hours()) / 24;
        return days > 0.02 ? Math.max(0, last.skimmateMl() - first.skimmateMl()) / days : last.skimmateMlPerDay();
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
