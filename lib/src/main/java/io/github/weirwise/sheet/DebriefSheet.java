package io.github.weirwise.sheet;

import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.practice.Debrief;
import io.github.weirwise.practice.HiddenFault;
import io.github.weirwise.practice.Lane;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.PredictionResult;
import io.github.weirwise.practice.ProcessPoint;
import io.github.weirwise.practice.QuestionResult;
import io.github.weirwise.practice.SessionClock;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.practice.ViewScore;
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
        StringBuilder page = PracticePage.begin(
                book, say("sheet.debrief.title", session.scenario().title()));
        String who = session.options().trainee();
        page.append(Html.element(
                "p",
                say(
                        "sheet.debrief.who",
                        who.isBlank() ? say("sheet.debrief.nobody") : who,
                        session.guidance().words(),
                        session.options().seed())));
        inShort(page, debrief);
        ownWords(page);
        course(page, debrief);
        outcome(page, debrief);
        page.append("<details><summary>")
                .append(Html.escaped(say("sheet.debrief.more")))
                .append("</summary>\n");
        hidden(page, debrief);
        head(page, "sheet.debrief.decisions");
        page.append(new DecisionPages(book).of(debrief));
        habits(page, debrief);
        predictions(page, debrief);
        views(page, debrief);
        questions(page, debrief);
        page.append("</details>\n");
        page.append(Html.element(
                "p", say("sheet.debrief.next", debrief.nextGuidance().words())));
        page.append(Html.element("p", say("sheet.debrief.foot")));
        return PracticePage.end(page);
    }

    private void head(StringBuilder page, String key) {
        page.append(Html.element("h2", say(key)));
    }

    private void inShort(StringBuilder page, Debrief debrief) {
        page.append("<ol class=\"key\">\n");
        debrief.inShort().forEach(each -> page.append(Html.element("li", book.say(each))));
        page.append("</ol>\n");
        page.append(Html.element("p", debrief.session().scenario().teaches()));
    }

    private void ownWords(StringBuilder page) {
        head(page, "sheet.debrief.ownWords");
        for (Phrase each : Debrief.OWN_WORDS) {
            page.append(Html.element("p", book.say(each))).append("<div class=\"lines\"></div>\n");
        }
    }

    private void hidden(StringBuilder page, Debrief debrief) {
        head(page, "sheet.debrief.hidden");
        page.append("<ul>\n");
        for (HiddenFault fault : debrief.hidden()) {
            page.append(Html.element(
                    "li", say("sheet.debrief.fault", Phrase.of(fault.cause().nameKey()), fault.words())));
        }
        page.append("</ul>\n");
    }

    private void course(StringBuilder page, Debrief debrief) {
        head(page, "sheet.debrief.course");
        page.append(new CourseChart(book, debrief.session().scenario().unit().target()).of(debrief.lanes()));
        List<Lane.Mark> acts =
                debrief.lanes().get(0).marks().stream().filter(Lane.Mark::act).toList();
        if (!acts.isEmpty()) {
            page.append("<ol>\n");
            acts.forEach(act -> page.append(
                    Html.element("li", say("sheet.debrief.act", SessionClock.words(act.atHours()), act.what()))));
            page.append("</ol>\n");
        }
    }

    private void outcome(StringBuilder page, Debrief debrief) {
        head(page, "sheet.debrief.outcome");
        HtmlTable table = new HtmlTable()
                .head(heads(
                        "sheet.debrief.hands",
                        "sheet.debrief.band",
                        "sheet.debrief.flood",
                        "sheet.debrief.stress",
                        "sheet.debrief.organics",
                        "sheet.debrief.changes",
                        "sheet.debrief.reached"));
        for (Lane lane : debrief.lanes()) {
            table.row(List.of(
                    book.say(lane.who()),
                    book.say(Quantity.of(lane.outcome().hoursInBand(), Unit.HOUR)),
                    book.say(Quantity.of(lane.outcome().floodHours(), Unit.HOUR)),
                    book.say(Quantity.of(lane.outcome().stressHours(), Unit.HOUR)),
                    book.say(Quantity.of(1000 * lane.outcome().organicsRemovedG(), Unit.COUNT)),
                    Integer.toString(lane.outcome().moves() + lane.outcome().services()),
                    say(lane.outcome().solved() ? "sheet.debrief.all" : "sheet.debrief.notAll")));
        }
        page.append(table.end());
        HtmlTable goals = new HtmlTable().head(heads("sheet.debrief.goal", "sheet.debrief.met"));
        debrief.outcome()
                .goals()
                .forEach(each -> goals.row(
                        List.of(book.say(each.what()), book.say(each.verdict().words()))));
        page.append(goals.end());
    }

    private void habits(StringBuilder page, Debrief debrief) {
        head(page, "sheet.debrief.habits");
        HtmlTable table = new HtmlTable();
        for (ProcessPoint each : debrief.points()) {
            table.row(List.of(
                    book.say(each.habit().words()), book.say(each.verdict().words()), book.say(each.reason())));
        }
        page.append(table.end());
    }

    private void predictions(StringBuilder page, Debrief debrief) {
        head(page, "sheet.debrief.predictions");
        if (!debrief.predictions().isEmpty()) {
            HtmlTable table = new HtmlTable()
                    .head(heads("sheet.debrief.did", "sheet.debrief.said", "sheet.debrief.came", "sheet.debrief.why"));
            debrief.predictions().forEach(each -> table.row(prediction(each)));
            page.append(table.end());
        }
        page.append(Html.element("p", book.say(debrief.predictionScore().words())));
    }

    private List<String> prediction(PredictionResult result) {
        String said = say(
                "sheet.debrief.expected",
                result.prediction().level().levelWords(),
                result.prediction().foam().foamWords(),
                Quantity.of(result.prediction().factor(), Unit.PLAIN),
                Quantity.of(result.prediction().sure(), Unit.SHARE));
        String came = result.judged()
                ? say(
                        "sheet.debrief.result",
                        result.level().levelWords(),
                        result.foam().foamWords(),
                        Quantity.of(result.factor(), Unit.PLAIN),
                        Phrase.of(result.hit() ? "sheet.debrief.hit" : "sheet.debrief.miss"))
                : say("sheet.debrief.unjudged");
        return List.of(
                say(
                        "sheet.debrief.act",
                        SessionClock.words(result.atHours()),
                        result.act().words()),
                said,
                came,
                result.judged() ? book.say(result.why()) : "");
    }

    private void views(StringBuilder page, Debrief debrief) {
        if (debrief.views().isEmpty()) {
            return;
        }
        head(page, "sheet.debrief.views");
        HtmlTable table = new HtmlTable()
                .head(heads(
                        "sheet.debrief.when", "sheet.debrief.held", "sheet.debrief.would", "sheet.debrief.onTruth"));
        for (ViewScore each : debrief.views()) {
            table.row(List.of(
                    book.say(SessionClock.words(each.atHours())),
                    shares(each.view()),
                    each.view().wouldDo(),
                    book.say(Quantity.of(each.onTruth(), Unit.SHARE))));
        }
        page.append(table.end());
    }

    private String shares(SessionStep.OwnView view) {
        return view.faults().shares().entrySet().stream()
                .filter(each -> each.getValue() > 0)
                .sorted(Map.Entry.<Cause, Double>comparingByValue().reversed())
                .map(each -> say(
                        "sheet.debrief.share",
                        Phrase.of(each.getKey().nameKey()),
                        Quantity.of(each.getValue(), Unit.SHARE)))
                .collect(Collectors.joining("; "));
    }

    private void questions(StringBuilder page, Debrief debrief) {
        List<QuestionResult> asked = debrief.questions().stream()
                .filter(each -> !each.question().causes())
                .toList();
        if (asked.isEmpty()) {
            return;
        }
        head(page, "sheet.debrief.questions");
        HtmlTable table =
                new HtmlTable().head(heads("sheet.debrief.question", "sheet.debrief.answer", "sheet.debrief.right"));
        for (QuestionResult each : asked) {
            table.row(List.of(
                    each.question().ask(),
                    each.answer().map(given -> answer(each, given)).orElse(""),
                    right(each)));
        }
        page.append(table.end());
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

    private List<String> heads(String... keys) {
        return List.of(keys).stream().map(key -> say(key)).toList();
    }

    private String say(String key, Object... values) {
        return book.say(Phrase.of(key, values));
    }
}
