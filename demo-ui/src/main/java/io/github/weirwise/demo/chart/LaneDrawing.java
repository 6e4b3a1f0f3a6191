package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Unit;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The lanes of a debrief as a drawing. */
public record LaneDrawing(LaneData data) implements Drawing {
    private static final double ROW_DAYS = 0.24;

    @Override
    public void draw(Graphics2D graphics, Rectangle2D area, Dress dress, Font font) {
        new LaneChart(data, dress, font).draw(graphics, area);
    }

    @Override
    public String describe(Words words) {
        return data.lanes().stream()
                .filter(lane -> !lane.points().isEmpty())
                .map(lane -> words.of(
                        "lanes.describe",
                        lane.who(),
                        words.say(lane.points().get(0).skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                        words.say(
                                lane.points().get(lane.points().size() - 1).skimmateMlPerDay(),
                                Unit.MILLILITRE_PER_DAY)))
                .collect(Collectors.joining(" "));
    }

    @Override
    public List<String> columns(Words words) {
        List<String> columns = new ArrayList<>(List.of(words.of("lanes.days")));
        data.lanes().forEach(lane -> columns.add(words.say(lane.who())));
        return columns;
    }

    @Override
    public List<List<String>> rows(Words words) {
        List<List<String>> rows = new ArrayList<>();
        double next = 0;
        for (LaneData.Point point : data.own().points()) {
            if (point.days() >= next) {
                List<String> row = new ArrayList<>(List.of(words.say(point.days(), Unit.DAY)));
                data.lanes().forEach(lane -> row.add(words.say(at(lane, point.days()), Unit.MILLILITRE_PER_DAY)));
                rows.add(row);
                next = point.days() + ROW_DAYS;
            }
        }
        return rows;
    }

    private static double at(LaneData.Lane lane, double days) {
        return lane.points().stream()
                .filter(point -> point.days() <= days + 1e-9)
                .mapToDouble(LaneData.Point::skimmateMlPerDay)
                .reduce(0, (first, last) -> last);
    }
}
