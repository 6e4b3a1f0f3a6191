package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * One reading made ready for weighing: when, in which stretches of settings the cup filled, and how much of that time the
 * foam had not settled.
 *
 * @param hours when it was taken, now is 0
 * @param spanHours for how long its cup had filled
 * @param reading the reading
 * @param segment index of the stretch of settings in which it was taken
 * @param earlier stretches in which a part of the cup's content came, with their shares; empty for most
 * @param unsettled share of the time in which the foam had not settled, 0 to 1
 * @param last whether it is the newest reading
 * @param usualReader whether the person who reads most often took it
 * @param trust exponent on the likelihood of its routine observations, 0 to 1: amounts drift together over days, so many
 *     old ones say less than as many independent ones would
 */
record Evidence(
        double hours,
        double spanHours,
        Reading reading,
        int segment,
        List<Earlier> earlier,
        double unsettled,
        boolean last,
        boolean usualReader,
        double trust) {
    /**
     * A stretch of settings before the reading's own.
     *
     * @param segment its index
     * @param least share of the cup's content that came in it if the foam follows a change at once
     * @param most the same if the foam follows late
     */
    record Earlier(int segment, double least, double most) {}

    /**
     * The pump is off while hands set the weir, so the foam may have to grow anew and bring nothing of what it was; or it follows
     * within hours, and what clings to the neck still later; assumed.
     */
    private static final double QUICK_HOURS = 0;

    private static final double SLOW_HOURS = 6;
    /** Hours for which the foam counts as unsettled after a service. */
    private static final double LAG_HOURS = 4;
    /** Foam is away after washing (4 to 24 h by common practice, from memory). */
    private static final double WASHED_HOURS = 16;

    private static final double RESTARTED_HOURS = 6;
    private static final double MOSTLY = 0.7;
    private static final double GLANCE_HOURS = 1;
    private static final double LASTING_TRUST = 0.35;
    private static final double FORGETTING_HOURS = 60;

    static List<Evidence> of(Timeline timeline) {
        List<Evidence> all = new ArrayList<>();
        List<Timeline.TimedReading> readings = timeline.readings();
        String usual = usualReader(readings);
        for (int i = 0; i < readings.size(); i++) {
            Timeline.TimedReading timed = readings.get(i);
            double span = timed.reading()
                    .find(Observation.CupVolume.class)
                    .map(Observation.CupVolume::hours)
                    .orElse(GLANCE_HOURS);
            double from = timed.hours() - span;
            all.add(new Evidence(
                    timed.hours(),
                    span,
                    timed.reading(),
                    timeline.segmentAt(timed.hours()),
                    earlier(timeline, from, timed.hours()),
                    unsettledShare(timeline, from, timed.hours()),
                    i == readings.size() - 1,
                    timed.reading().by().equals(usual),
                    trust(timed.hours())));
        }
        return all;
    }

    private static double trust(double hours) {
        return LASTING_TRUST + (1 - LASTING_TRUST) * Math.exp(hours / FORGETTING_HOURS);
    }

    private static String usualReader(List<Timeline.TimedReading> readings) {
        java.util.Map<String, Integer> counts = new java.util.TreeMap<>();
        readings.forEach(each -> counts.merge(each.reading().by(), 1, Integer::sum));
        return counts.entrySet().stream()
                .max(java.util.Map.Entry.comparingByValue())
                .map(java.util.Map.Entry::getKey)
                .orElse("");
    }

    private static List<Earlier> earlier(Timeline timeline, double from, double to) {
        List<Earlier> parts = new ArrayList<>();
        for (int i = timeline.segmentAt(to); i > 0; i--) {
            double least = share(timeline, i, from, to, QUICK_HOURS);
            double most = share(timeline, i, from, to, SLOW_HOURS);
            if (most > 0.02) {
                parts.add(new Earlier(i - 1, least, most));
            }
            if (timeline.segments().get(i).fromHours() + SLOW_HOURS <= from) {
                break;
            }
        }
        return parts;
    }

    /** Share of a span in which the foam was still that of the stretch before a given one. */
    private static double share(Timeline timeline, int segment, double from, double to, double lagHours) {
        double began = timeline.segments().get(segment).fromHours() + lagHours;
        double before =
                segment == 1 ? from : timeline.segments().get(segment - 1).fromHours() + lagHours;
        double hours = Math.min(to, began) - Math.max(from, Math.min(before, began));
        return Math.max(0, Math.min(1, hours / (to - from)));
    }

    private static double unsettledShare(Timeline timeline, double from, double to) {
        double hours = 0;
        for (Timeline.TimedService service : timeline.services()) {
            double away = service.part() == Part.NECK_AND_CUP ? WASHED_HOURS : LAG_HOURS;
            hours += Math.max(0, Math.min(to, service.hours() + away) - Math.max(from, service.hours()));
        }
        return Math.min(1, (hours + stoppedHours(timeline, from, to)) / (to - from));
    }

    /** Hours within a span in which a pump stood still or had just been started again. */
    private static double stoppedHours(Timeline timeline, double from, double to) {
        double hours = 0;
        double stopped = Double.NaN;
        for (Timeline.TimedHappening happening : timeline.happenings()) {
            if (happening.kind() == Happening.Kind.PUMP_STOPPED) {
                stopped = happening.hours();
            } else if (happening.kind() == Happening.Kind.PUMP_RESTARTED) {
                double began = Double.isNaN(stopped) ? happening.hours() : stopped;
                hours += Math.max(0, Math.min(to, happening.hours() + RESTARTED_HOURS) - Math.max(from, began));
                stopped = Double.NaN;
            }
        }
        return hours + (Double.isNaN(stopped) ? 0 : Math.max(0, to - Math.max(from, stopped)));
    }

    /** Whether so little of its time was settled that the amount, its darkness and the foam's look say nothing. */
    boolean saysNothingOfFoam() {
        return unsettled > MOSTLY;
    }
}
