package io.github.weirwise.sheet;

import io.github.weirwise.practice.Debrief;
import io.github.weirwise.practice.Decision;
import io.github.weirwise.practice.Lane;
import io.github.weirwise.practice.SessionClock;
import io.github.weirwise.practice.TrackPoint;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Reason;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Target;
import java.util.List;

/**
 * Each decision of a debrief: what was known, what the adviser would have done and why, and the branch beside the course.
 *
 * @param page what they are added to
 */
record DecisionPages(Page page) {
    private static final int DEEPEST = 2;
    private static final int MOST_REASONS = 5;

    void add(Debrief debrief) {
        if (debrief.decisions().isEmpty()) {
            page.element("p", page.say("sheet.decision.none"));
        }
        int number = 0;
        for (Decision each : debrief.decisions()) {
            decision(debrief, each, ++number);
        }
    }

    private void decision(Debrief debrief, Decision decision, int number) {
        Phrase at = SessionClock.words(decision.atHours());
        page.element("h3", page.say("sheet.decision.title", number, at, decision.did()));
        boolean unread = decision.known().isEmpty();
        page.element(
                "p", unread ? page.say("sheet.decision.unread") : page.say("sheet.decision.known", decision.known()));
        String agrees = decision.agrees() ? "sheet.decision.same" : "sheet.decision.other";
        page.element("p", page.say(agrees, decision.advice().what()));
        page.raw("<ul>\n");
        reasons(decision.advice().why(), 0);
        page.raw("</ul>\n").element("p", whatIf(debrief, decision));
        Target target = debrief.session().scenario().unit().target();
        page.raw(new CourseChart(page.book(), target).small(lanes(debrief, decision)));
    }

    private void reasons(Reason reason, int depth) {
        page.raw("<li>" + Html.escaped(page.book().say(reason.line())));
        if (depth < DEEPEST && !reason.because().isEmpty()) {
            page.raw("<ul>\n");
            reason.because().stream().limit(MOST_REASONS).forEach(each -> reasons(each, depth + 1));
            page.raw("</ul>\n");
        }
        page.raw("</li>\n");
    }

    private String whatIf(Debrief debrief, Decision decision) {
        return page.say(
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
}
