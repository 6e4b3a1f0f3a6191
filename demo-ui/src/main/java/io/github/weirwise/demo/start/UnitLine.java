package io.github.weirwise.demo.start;

import io.github.weirwise.care.CareItem;
import io.github.weirwise.care.CarePlan;
import io.github.weirwise.care.CareTask;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.desk.Forecast;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.round.Ages;
import io.github.weirwise.json.DocumentException;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One own unit on the start page.
 *
 * @param path its journal
 * @param name what it is called
 * @param says when it was read last and what that says of the amount, until when it is left, and what upkeep is due
 */
public record UnitLine(Path path, String name, List<Phrase> says) {
    /** Reads a journal; a file that cannot be read is told in its line. */
    public static UnitLine of(Path path, Clock clock) {
        try {
            return of(FileDesk.open(path, clock));
        } catch (IOException | DocumentException e) {
            return new UnitLine(path, String.valueOf(path.getFileName()), List.of(Words.phrase("start.unit.unread")));
        }
    }

    private static UnitLine of(FileDesk desk) {
        return new UnitLine(desk.path(), desk.title(), List.of(lastRead(desk), next(desk), due(desk)));
    }

    private static Phrase lastRead(Desk desk) {
        Optional<Reading> last = desk.journal().last(Reading.class);
        if (last.isEmpty()) {
            return Words.phrase("start.unit.never");
        }
        Instant at = last.get().at();
        return Words.phrase("start.unit.read", desk.clock().when(at), Ages.since(at, desk.now()), status(desk));
    }

    /** By what was read, not by what is computed. */
    private static Phrase status(Desk desk) {
        Optional<Desk.Seen<Observation.CupVolume>> cup = desk.newest(Observation.CupVolume.class);
        if (cup.isEmpty()) {
            return Words.phrase("start.unit.noCup");
        }
        double amount = cup.get().what().mlPerDay();
        Range band = desk.unit().target().skimmateBandMlPerDay();
        String key = amount < band.low() ? "less" : amount > band.high() ? "more" : "on";
        return Words.phrase("start.unit." + key, Quantity.of(amount, Unit.MILLILITRE_PER_DAY));
    }

    private static Phrase next(Desk desk) {
        return Forecast.newest(desk.journal())
                .filter(told -> told.until().isAfter(desk.now()))
                .map(told -> Words.phrase("leave.until", desk.clock().when(told.until())))
                .orElseGet(() -> Words.phrase("start.unit.visit"));
    }

    private static Phrase due(Desk desk) {
        List<CareItem> due = desk.journal().entries().isEmpty()
                ? List.of()
                : CarePlan.of(desk.journal(), desk.now()).toDo().stream()
                        .filter(item -> item.task() != CareTask.LOOK)
                        .toList();
        return due.isEmpty()
                ? Words.phrase("start.unit.nothingDue")
                : Words.phrase(
                        due.size() == 1 ? "start.unit.due" : "start.unit.dueMore",
                        due.get(0).task().what(),
                        due.size() - 1);
    }
}
