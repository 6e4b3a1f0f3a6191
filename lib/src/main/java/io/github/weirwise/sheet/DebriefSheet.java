package io.github.weirwise.sheet;

import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.practice.Debrief;
import io.github.weirwise.practice.HiddenFault;
import io.github.weirwise.practice.Lane;
import io.github.weirwise.practice.Outcome;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.PredictionResult;
import io.github.weirwise.practice.QuestionResult;
import io.github.weirwise.practice.SessionClock;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A debrief as one HTML page with SVG: the trainee's own words first, then what was hidden, the course, each decision,
 * habits, predictions. No scripts, nothing loaded; whatever came from outside is escaped. No mark.
 *
 * @param book language and units
 */
public record DebriefSheet(PhraseBook book) {
    /** Rejects null. */
    public DebriefSheet {
        Objects.requireNonNull(book, "book");
    }

    /** The page, to be written in UTF-8. */
    public String of(Debrief debrief) {
        PracticeSession session = debrief.session();
        Page page = new Page(
                book,
                book.say(Phrase.of("sheet.debrief.title", session.scenario().title())),
                "");
        String who = session.options().trainee();
        page.element(
                "p",
                page.say(
                        "sheet.debrief.who",
                        who.isBlank() ? page.say("sheet.debrief.nobody") : who,
                        session.guidance().words(),
                        session.options().seed()));
        inShort(page, debrief);
        ownWords(page);
        course(page, debrief);
        outcome(page, debrief);
        page.raw("<details>\n").element("summary", page.say("sheet.debrief.more"));
        hidden(page, debrief);
        page.head("sheet.debrief.decisions");
        new DecisionPages(page).add(debrief);
        habits(page, debrief);
        predictions(page, debrief);
        views(page, debrief);
        questions(page, debrief);
        return page.raw("</details>\n")
                .element(
                        "p",
                        page.say("sheet.debrief.next", debrief.nextGuidance().words()))
                .element("p", page.say("sheet.debrief.foot"))
                .end();
    }

    private void inShort(Page page, Debrief debrief) {
        page.raw("<ol class=\"key\">\n");
        debrief.inShort().forEach(each -> page.element("li", book.say(each)));
        page.raw("</ol>\n").element("p", debrief.session().scenario().teaches());
    }

    private void ownWords(Page page) {
        page.head("sheet.debrief.ownWords");
        for (Phrase each : Debrief.OWN_WORDS) {
            page.element("p", book.say(each)).raw("<div class=\"lines\"></div>\n");
        }
    }

    private static void hidden(Page page, Debrief debrief) {
        page.head("sheet.debrief.hidden").raw("<ul>\n");
        for (HiddenFault fault : debrief.hidden()) {
            Phrase cause = Phrase.of(fault.cause().nameKey());
            page.element("li", page.say("sheet.debrief.fault", cause, fault.words()));
        }
        page.raw("</ul>\n");
    }

    private void course(Page page, Debrief debrief) {
        page.head("sheet.debrief.course");
        page.raw(new CourseChart(book, debrief.session().scenario().unit().target()).of(debrief.lanes()));
        page.raw("<ol>\n");
        debrief.lanes().get(0).marks().stream()
                .filter(Lane.Mark::act)
                .forEach(act -> page.element(
                        "li", page.say("sheet.debrief.act", SessionClock.words(act.atHours()), act.what())));
        page.raw("</ol>\n");
    }

    private void outcome(Page page, Debrief debrief) {
        List<String> heads = page.all(
                "sheet.debrief.hands",
                "sheet.debrief.band",
                "sheet.debrief.flood",
                "sheet.debrief.stress",
                "sheet.debrief.organics",
                "sheet.debrief.changes",
                "sheet.debrief.reached");
        page.head("sheet.debrief.outcome").table(heads, debrief.lanes().stream().map(lane -> figures(page, lane)));
        page.table(
                page.all("sheet.debrief.goal", "sheet.debrief.met"),
                debrief.outcome().goals().stream()
                        .map(each -> List.of(
                                book.say(each.what()), book.say(each.verdict().words()))));
    }

    private List<String> figures(Page page, Lane lane) {
        Outcome outcome = lane.outcome();
        return List.of(
                book.say(lane.who()),
                book.say(Quantity.of(outcome.hoursInBand(), Unit.HOUR)),
                book.say(Quantity.of(outcome.floodHours(), Unit.HOUR)),
                book.say(Quantity.of(outcome.stressHours(), Unit.HOUR)),
                book.say(Quantity.of(1000 * outcome.organicsRemovedG(), Unit.COUNT)),
                Integer.toString(outcome.moves() + outcome.services()),
                page.say(outcome.solved() ? "sheet.debrief.all" : "sheet.debrief.notAll"));
    }

    private void habits(Page page, Debrief debrief) {
        page.head("sheet.debrief.habits")
                .table(
                        List.of(),
                        debrief.points().stream()
                                .map(each -> List.of(
                                        book.say(each.habit().words()),
                                        book.say(each.verdict().words()),
                                        book.say(each.reason()))));
    }

    private void predictions(Page page, Debrief debrief) {
        page.head("sheet.debrief.predictions");
        if (!debrief.predictions().isEmpty()) {
            page.table(
                    page.all("sheet.debrief.did", "sheet.debrief.said", "sheet.debrief.came", "sheet.debrief.why"),
                    debrief.predictions().stream().map(each -> prediction(page, each)));
        }
        page.element("p", book.say(debrief.predictionScore().words()));
    }

    private List<String> prediction(Page page, PredictionResult result) {
        String said = page.say(
                "sheet.debrief.expected",
                result.prediction().level().levelWords(),
                result.prediction().foam().foamWords(),
                Quantity.of(result.prediction().factor(), Unit.PLAIN),
                Quantity.of(result.prediction().sure(), Unit.SHARE));
        String came = result.judged()
                ? page.say(
                        "sheet.debrief.result",
                        result.level().levelWords(),
                        result.foam().foamWords(),
                        Quantity.of(result.factor(), Unit.PLAIN),
                        Phrase.of(result.hit() ? "sheet.debrief.hit" : "sheet.debrief.miss"))
                : page.say("sheet.debrief.unjudged");
        String did = page.say(
                "sheet.debrief.act",
                SessionClock.words(result.atHours()),
                result.act().words());
        return List.of(did, said, came, result.judged() ? book.say(result.why()) : "");
    }

    private void views(Page page, Debrief debrief) {
        if (debrief.views().isEmpty()) {
            return;
        }
        page.head("sheet.debrief.views")
                .table(
                        page.all(
                                "sheet.debrief.when",
                                "sheet.debrief.held",
                                "sheet.debrief.would",
                                "sheet.debrief.onTruth"),
                        debrief.views().stream()
                                .map(each -> List.of(
                                        book.say(SessionClock.words(each.atHours())),
                                        shares(page, each.view()),
                                        each.view().wouldDo(),
                                        book.say(Quantity.of(each.onTruth(), Unit.SHARE)))));
    }

    private static String shares(Page page, SessionStep.OwnView view) {
        return view.faults().shares().entrySet().stream()
                .filter(each -> each.getValue() > 0)
                .sorted(Map.Entry.<Cause, Double>comparingByValue().reversed())
                .map(each -> page.say(
                        "sheet.debrief.share",
                        Phrase.of(each.getKey().nameKey()),
                        Quantity.of(each.getValue(), Unit.SHARE)))
                .collect(Collectors.joining("; "));
    }

    private static void questions(Page page, Debrief debrief) {
        List<QuestionResult> asked = debrief.questions().stream()
                .filter(each -> !each.question().causes())
                .toList();
        if (asked.isEmpty()) {
            return;
        }
        page.head("sheet.debrief.questions")
                .table(
                        page.all("sheet.debrief.question", "sheet.debrief.answer", "sheet.debrief.right"),
                        asked.stream()
                                .map(each -> List.of(
                                        each.question().ask(),
                                        each.answer()
                                                .map(given -> answer(each, given))
                                                .orElse(""),
                                        right(each))));
    }

    private static String answer(QuestionResult result, SessionStep.Answer given) {
        String choice = given.choice() > 0 ? result.question().choices().get(given.choice() - 1) : "";
        return (choice + " " + given.words()).strip();
    }

    private static String right(QuestionResult result) {
        int right = result.question().right();
        String choice = right > 0 ? result.question().choices().get(right - 1) + ". " : "";
        return choice + result.question().why();
    }
}
