package io.github.weirwise.demo.window;

import io.github.weirwise.demo.chart.StripData;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.EntryWords;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.util.ArrayList;
import java.util.List;

/** Takes from a desk what the strip shows. */
final class StripOf {
    private StripOf() {}

    static StripData desk(Desk desk, Dress dress) {
        List<StripData.Seen> seen = desk.journal().all(Reading.class).stream()
                .map(StripData.Seen::of)
                .toList();
        return new StripData(
                desk.points(),
                seen,
                marks(desk, dress),
                desk.scene().bandMm(),
                desk.unit().target().skimmateBandMlPerDay(),
                desk.advice()
                        .filter(advice -> advice.judgeAt().isAfter(desk.now()))
                        .map(advice -> new StripData.Expected(
                                advice.judgeAt(),
                                advice.expectation().submergenceMm(),
                                advice.expectation().skimmateMlPerDay())),
                desk.clock());
    }

    private static List<StripData.Mark> marks(Desk desk, Dress dress) {
        List<StripData.Mark> marks = new ArrayList<>();
        for (JournalEntry entry : desk.journal().entries()) {
            if (entry instanceof WeirMove move) {
                marks.add(new StripData.Mark(
                        move.at(), dress.text("strip.weir", Quantity.of(move.toCrestMm(), Unit.MILLIMETRE))));
            } else if (entry instanceof SettingChange change) {
                marks.add(new StripData.Mark(change.at(), dress.text("strip.set." + change.what())));
            } else if (entry instanceof Service service) {
                marks.add(new StripData.Mark(service.at(), dress.words().say(EntryWords.part(service.part()))));
            }
        }
        return marks;
    }
}
