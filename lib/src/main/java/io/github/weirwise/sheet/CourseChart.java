package io.github.weirwise.sheet;

import io.github.weirwise.practice.Lane;
import io.github.weirwise.practice.TrackPoint;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Unit;
import io.github.weirwise.sheet.PanelChart.Mark;
import io.github.weirwise.sheet.PanelChart.Panel;
import io.github.weirwise.sheet.PanelChart.Point;
import io.github.weirwise.unit.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Courses of one tank under several hands: level, skimmate a day on a logarithmic scale with its band, and the cup, with a numbered
 * flag for each act.
 *
 * @param book language and units
 * @param target what is wanted
 */
record CourseChart(PhraseBook book, Target target) {
    private static final double HEIGHT = 92;

    /** The chart of some lanes, the first one's acts flagged. */
    String of(List<Lane> lanes) {
        List<String> names = lanes.stream().map(lane -> book.say(lane.who())).toList();
        return drawn(
                lanes,
                List.of(
                        panel("level", Unit.MILLIMETRE, lanes, TrackPoint::submergenceMm),
                        amount(lanes),
                        panel("cup", Unit.MILLILITRE, lanes, TrackPoint::collectedMl)),
                names);
    }

    /** A small chart of the amount alone. */
    String small(List<Lane> lanes) {
        return drawn(lanes, List.of(amount(lanes)), List.of());
    }

    private Panel amount(List<Lane> lanes) {
        return panel("amount", Unit.MILLILITRE_PER_DAY, lanes, TrackPoint::skimmateMlPerDay);
    }

    private Panel panel(String name, Unit unit, List<Lane> lanes, ToDoubleFunction<TrackPoint> value) {
        boolean amount = unit == Unit.MILLILITRE_PER_DAY;
        List<List<Point>> lines = lanes.stream()
                .map(lane -> lane.track().stream()
                        .map(each -> new Point(each.hours(), value.applyAsDouble(each), false))
                        .toList())
                .toList();
        return new Panel(
                book.say(Phrase.of("sheet.course." + name, unit.symbol(book.units()))),
                unit,
                amount,
                HEIGHT,
                amount ? Optional.of(target.skimmateBandMlPerDay()) : Optional.empty(),
                false,
                lines);
    }

    private String drawn(List<Lane> lanes, List<Panel> panels, List<String> legend) {
        double from = lanes.get(0).track().get(0).hours();
        double until = lanes.stream()
                .flatMap(lane -> lane.track().stream())
                .mapToDouble(TrackPoint::hours)
                .reduce(from + 1, Math::max);
        List<Mark> days = new ArrayList<>();
        double every = Math.max(1, Math.ceil((until - from) / 24 / 14)) * 24;
        for (double hour = Math.ceil(from / 24) * 24; hour <= until; hour += every) {
            days.add(new Mark(hour, book.say(Phrase.of("sheet.course.day", (int) (hour / 24)))));
        }
        List<Mark> marks = new ArrayList<>();
        int number = 0;
        for (Lane.Mark mark : lanes.get(0).marks()) {
            marks.add(new Mark(mark.atHours(), mark.act() ? Integer.toString(++number) : ""));
        }
        return new PanelChart(book, from, until)
                .of(book.say(Phrase.of("sheet.course.title")), panels, days, marks, legend);
    }
}
