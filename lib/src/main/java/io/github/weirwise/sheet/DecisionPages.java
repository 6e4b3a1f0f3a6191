package io.github.weirwise.sheet;

import io.github.weirwise.practice.Debrief;
import io.github.weirwise.practice.Decision;
import io.github.weirwise.practice.Lane;
import io.github.weirwise.practice.SessionClock;
import io.github.weirwise.practice.TrackPoint;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Reason;
import io.github.weirwise.report.Unit;
import java.util.List;

/**
 * Each decision of a debrief: what was known, what the adviser would have done and why, and the branch beside the course.
 *
 * @param book language and units
 */
record DecisionPages(PhraseBook book) {
    private static final int DEEPEST = 2;
    private static final int MOST_REASONS = 5;

    String of(Debrief debrief) {
        StringBuilder page = new StringBuilder();
        int number = 0;
        for (Decision each : debrief.decisions()) {
            page.append(decision(debrief, each, ++number));
        }
        return number == 0 ? Html.element("p", say("sheet.decision.none")) : page.toString();
    }

    private String decision(Debrief debrief, Decision decision, int number) {
        StringBuilder text = new StringBuilder();
        text.append(Html.element(
                "h3", say("sheet.decision.title", number, SessionClock.words(decision.atHours()), decision.did())));
        text.append(Html.element(
                "p",
                decision.known().isEmpty()
                        ? say("sheet.decision.unread")
                        : say("sheet.decision.known", decision.known())));
        text.append(Html.element(
                "p",
                say(
                        decision.agrees() ? "sheet.decision.same" : "sheet.decision.other",
                        decision.advice().what())));
        text.append("<ul>\n");
        reasons(text, decision.advice().why(), 0);
        text.append("</ul>\n");
        text.append(Html.element("p", whatIf(debrief, decision)));
        text.append(
                new CourseChart(book, debrief.session().scenario().unit().target()).small(lanes(debrief, decision)));
        return text.toString();
    }

    private void reasons(StringBuilder text, Reason reason, int depth) {
        text.append("<li>").append(Html.escaped(book.say(reason.line())));
        if (depth < DEEPEST && !reason.because().isEmpty()) {
            text.append("<ul>\n");
            reason.because().stream().limit(MOST_REASONS).forEach(each -> reasons(text, each, depth + 1));
            text.append("</ul>\n");
        }
        text.append("</li>\n");
    }

    private String whatIf(Debrief debrief, Decision decision) {
        return say(
                "sheet.decision.whatIf",
                Phrase.of(decision.whatIf().solved() ? "sheet.debrief.all" : "sheet.debrief.notAll"),
                Quantity.of(decision.whatIf().hoursInBand(), Unit.HOUR),
                Quantity.of(debrief.outcome().hoursInBand(), Unit.HOUR),
                Quantity.of(decision.whatIf().floodHours(), Unit.HOUR),
                Quantity.of(debrief.outcome().floodHours(), Unit.HOUR));
    }

    private static List<Lane> lanes(Debrief debrief, Decision decision) {
        Lane own = debrief.lanes().get(0);
        List<TrackPoint> branch = decision.whatIfTrack().stream()
                .filter(each -> each.hours() >= decision.atHours())
                .toList();
        Lane.Mark mark = new Lane.Mark(decision.atHours(), true, decision.did());
        return List.of(
                new Lane(own.who(), own.outcome(), own.track(), List.of(mark)),
                new Lane(Phrase.of("sheet.decision.branch"), decision.whatIf(), branch, List.of()));
    }

    private String say(String key, Object... values) {
        return book.say(Phrase.of(key, values));
    }
}
