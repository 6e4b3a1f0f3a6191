package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.practice.Debrief;
import io.github.weirwise.practice.Lane;
import io.github.weirwise.practice.TrackPoint;
import io.github.weirwise.report.Unit;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Three lanes of one practice session on one time axis: what was done, what came against what was said, what others would have done.
 *
 * @param debrief the session and its lanes
 * @param atHours where the replay stands, on the session's clock
 */
public record LaneDrawing(Debrief debrief, double atHours) implements Drawing {
    private static final double ROW_HOURS = 5.76;

    /** Days since the trainee came in. */
    double days(double hours) {
        return (hours - debrief.session().scenario().start().arrivesAtHour()) / 24;
    }

    @Override
    public void draw(Graphics2D graphics, Rectangle2D area, Dress dress, Font font) {
        new LaneChart(this, dress, font).draw(graphics, area);
    }

    @Override
    public String describe(Words words) {
        return debrief.lanes().stream()
                .map(lane -> words.of(
                        "lanes.describe",
                        lane.who(),
                        words.say(lane.track().get(0).skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                        words.say(at(lane, Double.MAX_VALUE), Unit.MILLILITRE_PER_DAY)))
                .collect(Collectors.joining(" "));
    }

    @Override
    public List<String> columns(Words words) {
        List<String> columns = new ArrayList<>(List.of(words.of("lanes.days")));
        debrief.lanes().forEach(lane -> columns.add(words.say(lane.who())));
        return columns;
    }

    @Override
    public List<List<String>> rows(Words words) {
        List<List<String>> rows = new ArrayList<>();
        double next = 0;
        for (TrackPoint point : debrief.lanes().get(0).track()) {
            if (point.hours() >= next) {
                List<String> row = new ArrayList<>(List.of(words.say(days(point.hours()), Unit.DAY)));
                debrief.lanes().forEach(lane -> row.add(words.say(at(lane, point.hours()), Unit.MILLILITRE_PER_DAY)));
                rows.add(row);
                next = point.hours() + ROW_HOURS;
            }
        }
        return rows;
    }

    private static double at(Lane lane, double hours) {
        return lane.track().stream()
                .filter(point -> point.hours() <= hours + 1e-6)
                .mapToDouble(TrackPoint::skimmateMlPerDay)
                .reduce(0, (first, last) -> last);
    }
}
