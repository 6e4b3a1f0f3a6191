package io.github.weirwise.sheet;

import io.github.weirwise.practice.Lane;
import io.github.weirwise.practice.ProcessPoint;
import io.github.weirwise.practice.ProcessPoint.Verdict;
import io.github.weirwise.practice.SessionClock;
import io.github.weirwise.practice.SessionSummary;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Several trainees' sessions side by side as one HTML page: figures, habits, and each course at the same scale. Sorted by
 * name, not by success: it is made for talking, not for ranking.
 *
 * @param book language and units
 */
public record GroupSheet(PhraseBook book) {
    /** Rejects null. */
    public GroupSheet {
        Objects.requireNonNull(book, "book");
    }

    /** The page without notes, to be written in UTF-8. */
    public String of(List<SessionSummary> sessions) {
        return of(sessions, "");
    }

    /** The page with the trainer's notes at its end, to be written in UTF-8. */
    public String of(List<SessionSummary> sessions, String notes) {
        List<SessionSummary> sorted = sessions.stream()
                .sorted(Comparator.comparing(each -> each.options().trainee()))
                .toList();
        StringBuilder page = PracticePage.begin(book, say("sheet.group.title", sorted.size()));
        page.append(Html.element("p", say("sheet.group.lead")));
        figures(page, sorted);
        habits(page, sorted);
        page.append(Html.element("h2", say("sheet.group.courses")));
        for (SessionSummary each : sorted) {
            page.append(Html.element("h3", name(each) + " - " + each.scenario().title()));
            page.append(Html.element("p", acts(each.lane())));
            if (!each.lane().track().isEmpty()) {
                page.append(new CourseChart(book, each.scenario().unit().target()).small(List.of(each.lane())));
            }
        }
        if (!notes.isBlank()) {
            page.append(Html.element("h2", say("sheet.group.notes")));
            notes.lines().forEach(line -> page.append(Html.element("p", line)));
        }
        return PracticePage.end(page);
    }

    private void figures(StringBuilder page, List<SessionSummary> sessions) {
        page.append(Html.element("h2", say("sheet.group.figures")));
        HtmlTable table = new HtmlTable()
                .head(heads(List.of(
                        "sheet.group.name",
                        "sheet.group.scenario",
                        "sheet.debrief.reached",
                        "sheet.debrief.band",
                        "sheet.debrief.flood",
                        "sheet.debrief.changes",
                        "sheet.group.looks",
                        "sheet.group.first",
                        "sheet.group.predictions",
                        "sheet.debrief.onTruth")));
        for (SessionSummary each : sessions) {
            table.row(List.of(
                    name(each),
                    each.scenario().title(),
                    say(each.lane().outcome().solved() ? "sheet.debrief.all" : "sheet.debrief.notAll"),
                    book.say(Quantity.of(each.lane().outcome().hoursInBand(), Unit.HOUR)),
                    book.say(Quantity.of(each.lane().outcome().floodHours(), Unit.HOUR)),
                    Integer.toString(each.lane().outcome().moves()
                            + each.lane().outcome().services()),
                    Integer.toString(each.lane().outcome().looks()),
                    firstAct(each.lane()),
                    say(
                            "sheet.group.hits",
                            each.predictions().hits(),
                            each.predictions().judged()),
                    each.lastViewOnTruth().isPresent()
                            ? book.say(Quantity.of(each.lastViewOnTruth().getAsDouble(), Unit.SHARE))
                            : ""));
        }
        page.append(table.end());
    }

    private void habits(StringBuilder page, List<SessionSummary> sessions) {
        page.append(Html.element("h2", say("sheet.debrief.habits")));
        List<String> names = new ArrayList<>(List.of(say("sheet.group.name")));
        for (ProcessPoint.Habit habit : ProcessPoint.Habit.values()) {
            names.add(book.say(habit.words()));
        }
        HtmlTable table = new HtmlTable().head(names);
        for (SessionSummary each : sessions) {
            List<String> row = new ArrayList<>(List.of(name(each)));
            for (ProcessPoint.Habit habit : ProcessPoint.Habit.values()) {
                row.add(verdict(each, habit));
            }
            table.row(row);
        }
        page.append(table.end());
    }

    private String verdict(SessionSummary session, ProcessPoint.Habit habit) {
        return session.points().stream()
                .filter(point -> point.habit() == habit)
                .map(ProcessPoint::verdict)
                .findFirst()
                .map(verdict -> verdict == Verdict.NO_OCCASION ? "-" : book.say(verdict.words()))
                .orElse("-");
    }

    private String name(SessionSummary session) {
        String name = session.options().trainee();
        return name.isBlank() ? say("sheet.debrief.nobody") : name;
    }

    private String firstAct(Lane lane) {
        Optional<Lane.Mark> first = lane.marks().stream().filter(Lane.Mark::act).findFirst();
        return first.map(mark -> say("sheet.debrief.act", SessionClock.words(mark.atHours()), mark.what()))
                .orElse("-");
    }

    private String acts(Lane lane) {
        List<Phrase> acts = lane.marks().stream()
                .filter(Lane.Mark::act)
                .map(Lane.Mark::what)
                .toList();
        return acts.isEmpty() ? say("sheet.group.noActs") : say("sheet.group.acts", acts);
    }

    private List<String> heads(List<String> keys) {
        return keys.stream().map(key -> say(key)).toList();
    }

    private String say(String key, Object... values) {
        return book.say(Phrase.of(key, values));
    }
}
