package io.github.weirwise.evidence;

import io.github.weirwise.care.CareCalendar;
import io.github.weirwise.care.CareTask;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.setup.LanternQuaySites;
import io.github.weirwise.sheet.CareCalendarFile;
import io.github.weirwise.sheet.HandOver;
import io.github.weirwise.sheet.HandOverSheet;
import io.github.weirwise.sheet.SampleJournal;
import io.github.weirwise.unit.SkimmerUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.Optional;

/** Writes the example hand-over sheet and care calendar below docs/examples, from an invented journal of two months. */
final class HandOverCommand {
    private static final Instant NOW = Instant.parse("2026-05-04T08:00:00Z");
    private static final int CALENDAR_DAYS = 92;

    private HandOverCommand() {}

    static void run() throws IOException {
        FitCheck fit = FitCheck.of(LanternQuaySites.trainingTank());
        SkimmerUnit unit = fit.installation().filter().unit();
        HandOver over = HandOver.of(unit, fit.weir().settings(), SampleJournal.twoMonths(NOW), Optional.of(fit), NOW);
        CareCalendar calendar = CareCalendar.of(
                over.plan(), ZoneOffset.UTC, CALENDAR_DAYS, EnumSet.complementOf(EnumSet.of(CareTask.LOOK)));
        PhraseBook english = PhraseBook.ENGLISH_METRIC;
        String page = new HandOverSheet(english, ZoneOffset.UTC).of(over);
        write("handover.html", page);
        write("care-calendar.ics", new CareCalendarFile(english, unit.name(), NOW).of(calendar));
        System.out.println("result: pages=1 events=" + events(calendar) + " overdueOrDue="
                + over.plan().toDo().size() + " characters=" + page.length());
    }

    private static void write(String name, String text) throws IOException {
        Path path = Path.of("docs", "examples", name);
        Files.createDirectories(path.getParent());
        Files.writeString(path, text);
        System.out.println("wrote " + path);
    }

    private static long events(CareCalendar calendar) {
        return calendar.dates().stream().map(date -> date.task()).distinct().count();
    }
}
