package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Part;
import io.github.weirwise.reading.Reading;
import java.util.ArrayList;
import java.util.List;

/**
 * One reading made ready for weighing: when, in which stretches of settings the cup filled, and how much of that time the
 * foam had not settled.
 *
 * @param hours when it was taken, now is 0
 * @param reading the reading
 * @param segment index of the stretch of settings in which it was taken
 * @param earlier stretches in which a part of the cup's content came, with their shares; empty for most
 * @param unsettled share of the time in which the foam had not settled, 0 to 1
 * @param last whether it is the newest reading
 */
record Evidence(double hours, Reading reading, int segment, List<Earlier> earlier, double unsettled, boolean last) {
    /** A stretch of settings before the reading's own, and its share of the cup's time. */
    record Earlier(int segment, double share) {}

    /** After a change the foam follows within hours; assumed. */
    private static final double LAG_HOURS = 4;
    /** Foam is away after washing (4 to 24 h by common practice, from memory). */
    private static final double WASHED_HOURS = 16;

    private static final double GLANCE_HOURS = 1;

    static List<Evidence> of(Timeline timeline) {
        List<Evidence> all = new ArrayList<>();
        List<Timeline.TimedReading> readings = timeline.readings();
        for (int i = 0; i < readings.size(); i++) {
            Timeline.TimedReading timed = readings.get(i);
            double span = timed.reading()
                    .find(Observation.CupVolume.class)
                    .map(Observation.CupVolume::hours)
                    .orElse(GLANCE_HOURS);
            double from = timed.hours() - span;
            all.add(new Evidence(
                    timed.hours(),
                    timed.reading(),
                    timeline.segmentAt(timed.hours()),
                    earlier(timeline, from, timed.hours()),
                    unsettledShare(timeline, from, timed.hours()),
                    i == readings.size() - 1));
        }
        return all;
    }

    private static List<Earlier> earlier(Timeline timeline, double from, double to) {
        List<Earlier> parts = new ArrayList<>();
        int own = timeline.segmentAt(to);
        for (int i = own; i > 0; i--) {
            double began = timeline.segments().get(i).fromHours() + LAG_HOURS;
            double before = i == 1 ? from : timeline.segments().get(i - 1).fromHours() + LAG_HOURS;
            double share = (Math.min(to, began) - Math.max(from, Math.min(before, began))) / (to - from);
            if (share > 0.02) {
                parts.add(new Earlier(i - 1, Math.min(1, share)));
            }
            if (began <= from) {
                break;
            }
        }
        return parts;
    }

    private static double unsettledShare(Timeline timeline, double from, double to) {
        double hours = 0;
        for (Timeline.TimedService service : timeline.services()) {
            double away = service.part() == Part.NECK_AND_CUP ? WASHED_HOURS : LAG_HOURS;
            hours += Math.max(0, Math.min(to, service.hours() + away) - Math.max(from, service.hours()));
        }
        return Math.min(1, hours / (to - from));
    }
}
