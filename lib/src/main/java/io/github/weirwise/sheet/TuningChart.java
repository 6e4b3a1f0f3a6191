package io.github.weirwise.sheet;

import io.github.weirwise.reading.Observation.CupVolume;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Unit;
import io.github.weirwise.sheet.PanelChart.Mark;
import io.github.weirwise.sheet.PanelChart.Panel;
import io.github.weirwise.sheet.PanelChart.Point;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Skimmate per day against time with the wanted band, the weir's crest below it, and a mark for each service, over the last weeks.
 *
 * @param book language and units
 * @param over what the next person has to know
 * @param zone the unit's time zone
 */
record TuningChart(PhraseBook book, HandOver over, ZoneId zone) {
    private static final int DAYS = 60;
    static final double AMOUNT_HEIGHT = 110;
    private static final double CREST_HEIGHT = 36;

    /** The drawing; without any cup volume it is a sentence instead. */
    String drawn() {
        List<Point> amounts = new ArrayList<>();
        for (Reading reading : over.journal().all(Reading.class)) {
            reading.find(CupVolume.class)
                    .filter(cup -> ago(reading.at()) <= DAYS)
                    .ifPresent(cup -> amounts.add(new Point(-ago(reading.at()), cup.mlPerDay(), cup.full())));
        }
        if (amounts.isEmpty()) {
            return Html.element("p", book.say(Phrase.of("sheet.chart.none")));
        }
        List<Panel> panels = new ArrayList<>();
        panels.add(new Panel(
                title("sheet.chart.amount", Unit.MILLILITRE_PER_DAY),
                Unit.MILLILITRE_PER_DAY,
                false,
                AMOUNT_HEIGHT,
                Optional.of(over.unit().target().skimmateBandMlPerDay()),
                true,
                List.of(amounts)));
        double from =
                -Math.max(1, Math.min(DAYS, ago(over.journal().entries().get(0).at())));
        List<Point> crest = crest(from);
        if (!crest.isEmpty()) {
            String title = title("sheet.chart.crest", Unit.MILLIMETRE);
            panels.add(new Panel(title, Unit.MILLIMETRE, false, CREST_HEIGHT, Optional.empty(), false, List.of(crest)));
        }
        List<Mark> services = over.journal().all(Service.class).stream()
                .filter(each -> ago(each.at()) <= -from)
                .map(each -> new Mark(-ago(each.at()), ""))
                .toList();
        String title = book.say(Phrase.of("sheet.chart.title"));
        return new PanelChart(book, from, 0).of(title, panels, days(from), services, List.of())
                + Html.element("p", book.say(Phrase.of("sheet.chart.legend")));
    }

    private String title(String key, Unit unit) {
        return book.say(Phrase.of(key, unit.symbol(book.units())));
    }

    private List<Mark> days(double from) {
        List<Mark> days = new ArrayList<>();
        long step = Math.max(1, Math.round(-from / 6));
        LocalDate day = over.now().atZone(zone).toLocalDate();
        for (double at = 0; at > from; day = day.minusDays(step)) {
            at = -ago(day.atStartOfDay(zone).toInstant());
            // A label at the very edge would be cut.
            if (at > 0.97 * from && at < 0.03 * from) {
                days.add(new Mark(at, day.toString()));
            }
        }
        return days;
    }

    /** The crest that the journal tells of, in steps; before its first move nothing is known and nothing is drawn. */
    private List<Point> crest(double from) {
        List<Point> steps = new ArrayList<>();
        for (WeirMove move : over.journal().all(WeirMove.class)) {
            double at = Math.max(from, -ago(move.at()));
            if (!steps.isEmpty()) {
                steps.add(new Point(at, steps.get(steps.size() - 1).value(), false));
            }
            steps.add(new Point(at, move.toCrestMm(), false));
        }
        if (!steps.isEmpty()) {
            steps.add(new Point(0, steps.get(steps.size() - 1).value(), false));
        }
        return steps;
    }

    /** Days before the hand-over. */
    private double ago(Instant at) {
        return Duration.between(at, over.now()).toMillis() / 86_400_000.0;
    }
}
