package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.desk.History;
import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Count;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What the strip shows.
 *
 * @param points the tank's last days
 * @param seen readings
 * @param marks things done
 * @param bandMm wanted levels
 * @param bandMlPerDay wanted amounts
 * @param expected what the advice expects, if there is advice
 * @param clock tells its times; day 1 begins with its start
 */
public record StripData(
        List<History.Point> points,
        List<Seen> seen,
        List<Mark> marks,
        Range bandMm,
        Range bandMlPerDay,
        Optional<Expected> expected,
        Clock clock)
        implements Drawing {
    /** Copies the lists. */
    public StripData {
        points = List.copyOf(points);
        seen = List.copyOf(seen);
        marks = List.copyOf(marks);
    }

    /** A reading; NaN for what was not seen. */
    public record Seen(Instant at, double submergenceMm, double skimmateMlPerDay) {
        /** Level and amount of a reading. */
        public static Seen of(Reading reading) {
            return new Seen(
                    reading.at(),
                    reading.find(Observation.FunnelLevel.class)
                            .map(Observation.FunnelLevel::mm)
                            .orElse(Double.NaN),
                    reading.find(Observation.CupVolume.class)
                            .map(Observation.CupVolume::mlPerDay)
                            .orElse(Double.NaN));
        }
    }

    /** Something done, with a short label. */
    public record Mark(Instant at, String label) {}

    /** What should be seen at a time. */
    public record Expected(Instant at, Range submergenceMm, Range skimmateMlPerDay) {}

    @Override
    public void draw(Graphics2D graphics, Rectangle2D area, Dress dress, Font font) {
        new StripChart(this, dress, font).draw(graphics, area);
    }

    @Override
    public String describe(Words words) {
        if (points.isEmpty()) {
            return words.of(
                    "strip.seen",
                    Count.of(seen.size(), "report.count.readings"),
                    Count.of(marks.size(), "report.count.changes"));
        }
        var first = points.get(0);
        var last = points.get(points.size() - 1);
        return words.of(
                "strip.describe",
                words.say(first.submergenceMm(), Unit.MILLIMETRE),
                words.say(last.submergenceMm(), Unit.MILLIMETRE),
                words.say(first.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                words.say(last.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                Count.of(marks.size(), "report.count.changes"));
    }

    @Override
    public List<String> columns(Words words) {
        return List.of(words.of("strip.column.when"), words.of("strip.column.level"), words.of("strip.column.amount"));
    }

    @Override
    public List<List<String>> rows(Words words) {
        return seen.stream()
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
