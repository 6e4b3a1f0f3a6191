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

/**
 * Courses under different hands as a drawing.
 *
 * @param data what it shows
 */
public record LaneDrawing(LaneData data) implements Drawing {
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
        for (LaneData.Point point : data.lanes().isEmpty()
                ? List.<LaneData.Point>of()
                : data.lanes().get(0).points()) {
            List<String> row = new ArrayList<>(List.of(words.say(point.days(), Unit.DAY)));
            for (LaneData.Lane lane : data.lanes()) {
                row.add(words.say(at(lane, point.days()), Unit.MILLILITRE_PER_DAY));
            }
            rows.add(row);
        }
        return rows;
    }

    /** The amount at a time, by the nearest point before it. */
    private static double at(LaneData.Lane lane, double days) {
        double amount = 0;
        for (LaneData.Point point : lane.points()) {
            if (point.days() > days + 1e-9) {
                break;
            }
            amount = point.skimmateMlPerDay();
        }
        return amount;
    }
}
