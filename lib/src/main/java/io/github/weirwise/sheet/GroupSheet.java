package io.github.weirwise.sheet;

import io.github.weirwise.practice.Lane;
import io.github.weirwise.practice.Outcome;
import io.github.weirwise.practice.PredictionScore;
import io.github.weirwise.practice.ProcessPoint;
import io.github.weirwise.practice.ProcessPoint.Verdict;
import io.github.weirwise.practice.SessionClock;
import io.github.weirwise.practice.SessionSummary;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

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

    /** The page with the trainer's notes at its end, to be written in UTF-8. */
    public String of(List<SessionSummary> sessions, String notes) {
        List<SessionSummary> sorted = sessions.stream()
                .sorted(Comparator.comparing(each -> each.options().trainee()))
                .toList();
        Page page = new Page(book, say("sheet.group.title", sorted.size()), "");
        page.element("p", say("sheet.group.lead"));
        figures(page, sorted);
        habits(page, sorted);
        page.head("sheet.group.courses");
        for (SessionSummary each : sorted) {
            page.element("h3", name(each) + " - " + each.scenario().title());
            page.element("p", acts(each.lane()));
            if (!each.lane().track().isEmpty()) {
                page.raw(new CourseChart(book, each.scenario().unit().target()).small(List.of(each.lane())));
            }
        }
        if (!notes.isBlank()) {
            page.head("sheet.group.notes");
            notes.lines().forEach(line -> page.element("p", line));
        }
        return page.end();
    }

    private void figures(Page page, List<SessionSummary> sessions) {
        List<String> heads = page.all(
                "sheet.group.name",
                "sheet.group.scenario",
                "sheet.debrief.reached",
                "sheet.debrief.band",
                "sheet.debrief.flood",
                "sheet.debrief.changes",
                "sheet.group.looks",
                "sheet.group.first",
                "sheet.group.predictions",
                "sheet.debrief.onTruth");
        page.head("sheet.group.figures").table(heads, sessions.stream().map(this::figures));
    }

    private List<String> figures(SessionSummary each) {
        Outcome outcome = each.lane().outcome();
        OptionalDouble onTruth = each.lastViewOnTruth();
        PredictionScore predictions = each.predictions();
        return List.of(
                name(each),
                each.scenario().title(),
                say(outcome.solved() ? "sheet.debrief.all" : "sheet.debrief.notAll"),
                book.say(Quantity.of(outcome.hoursInBand(), Unit.HOUR)),
                book.say(Quantity.of(outcome.floodHours(), Unit.HOUR)),
                Integer.toString(outcome.moves() + outcome.services()),
                Integer.toString(outcome.looks()),
                firstAct(each.lane()),
                say("sheet.group.hits", predictions.hits(), predictions.judged()),
                onTruth.isPresent() ? book.say(Quantity.of(onTruth.getAsDouble(), Unit.SHARE)) : "");
    }

    private void habits(Page page, List<SessionSummary> sessions) {
        List<ProcessPoint.Habit> habits = List.of(ProcessPoint.Habit.values());
        Stream<String> names = habits.stream().map(habit -> book.say(habit.words()));
        page.head("sheet.debrief.habits")
                .table(
                        Stream.concat(Stream.of(say("sheet.group.name")), names).toList(),
                        sessions.stream()
                                .map(each -> Stream.concat(
                                                Stream.of(name(each)),
                                                habits.stream().map(habit -> verdict(each, habit)))
                                        .toList()));
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

    private String say(String key, Object... values) {
        return book.say(Phrase.of(key, values));
    }
}
