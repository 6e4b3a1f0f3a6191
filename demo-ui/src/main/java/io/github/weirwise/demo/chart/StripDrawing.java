package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Count;
import io.github.weirwise.report.Unit;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * The strip of the last days as a drawing.
 *
 * @param data what it shows
 */
public record StripDrawing(StripData data) implements Drawing {
    @Override
    public void draw(Graphics2D graphics, Rectangle2D area, Dress dress, Font font) {
        new StripChart(data, dress, font).draw(graphics, area);
    }

    @Override
    public String describe(Words words) {
        if (data.points().isEmpty()) {
            return words.of(
                    "strip.seen",
                    Count.of(data.seen().size(), "report.count.readings"),
                    Count.of(data.marks().size(), "report.count.changes"));
        }
        var first = data.points().get(0);
        var last = data.points().get(data.points().size() - 1);
        return words.of(
                "strip.describe",
                words.say(first.submergenceMm(), Unit.MILLIMETRE),
                words.say(last.submergenceMm(), Unit.MILLIMETRE),
                words.say(first.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                words.say(last.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                Count.of(data.marks().size(), "report.count.changes"));
    }

    @Override
    public List<String> columns(Words words) {
        return List.of(words.of("strip.column.when"), words.of("strip.column.level"), words.of("strip.column.amount"));
    }

    @Override
    public List<List<String>> rows(Words words) {
        Clock clock = data.clock();
        return data.seen().stream()
                .map(seen -> List.of(
                        words.say(clock.when(seen.at())),
                        number(words, seen.submergenceMm(), Unit.MILLIMETRE),
                        number(words, seen.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY)))
                .toList();
    }

    private static String number(Words words, double value, Unit unit) {
        return Double.isFinite(value) ? words.say(value, unit) : words.of("strip.notSeen");
    }
}
