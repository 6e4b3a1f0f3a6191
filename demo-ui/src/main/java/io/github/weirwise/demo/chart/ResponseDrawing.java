package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * "Skimmate and colour against weir" as a drawing.
 *
 * @param data what it shows
 */
public record ResponseDrawing(ResponseData data) implements Drawing {
    @Override
    public void draw(Graphics2D graphics, Rectangle2D area, Dress dress, Font font) {
        new ResponseChart(data, dress, font).draw(graphics, area);
    }

    @Override
    public String describe(Words words) {
        ResponseData.Point low = data.points().get(0);
        ResponseData.Point high = data.points().get(data.points().size() - 1);
        return words.of(
                "response.describe",
                Quantity.of(low.crestMm(), Unit.MILLIMETRE),
                Quantity.of(low.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                Quantity.of(high.crestMm(), Unit.MILLIMETRE),
                Quantity.of(high.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                Quantity.of(data.today().crestMm(), Unit.MILLIMETRE),
                Quantity.of(data.today().skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY));
    }

    @Override
    public List<String> columns(Words words) {
        return List.of(
                words.of("response.column.crest"),
                words.of("response.column.level"),
                words.of("response.column.amount"),
                words.of("response.column.darkness"));
    }

    @Override
    public List<List<String>> rows(Words words) {
        return data.points().stream()
                .map(point -> List.of(
                        words.say(point.crestMm(), Unit.MILLIMETRE),
                        words.say(point.submergenceMm(), Unit.MILLIMETRE),
                        words.say(point.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                        words.say(point.darknessPtCo(), Unit.PLATINUM_COBALT)))
                .toList();
    }
}
