package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Row;
import io.github.weirwise.practice.Debrief;
import io.github.weirwise.practice.Decision;
import io.github.weirwise.practice.GoalCheck;
import io.github.weirwise.practice.HiddenFault;
import io.github.weirwise.practice.PredictionResult;
import io.github.weirwise.practice.ProcessPoint;
import io.github.weirwise.practice.QuestionResult;
import io.github.weirwise.practice.ViewScore;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A debrief as lines: what was hidden, goals, each decision beside the adviser's, habits, predictions, views, answers. */
final class DebriefRows {
    private final Debrief debrief;
    private final Dress dress;
    private final TankClock clock;
    private final List<Row> rows = new ArrayList<>();
    private final List<Optional<Decision>> decisions = new ArrayList<>();

    DebriefRows(Debrief debrief, Dress dress) {
        this.debrief = debrief;
        this.dress = dress;
        clock = new TankClock(debrief.session());
        hidden();
        goals();
        debrief.decisions().forEach(this::decision);
        debrief.points().forEach(this::habit);
        debrief.predictions().forEach(this::prediction);
        debrief.views().forEach(this::view);
        debrief.questions().forEach(this::question);
        add(
                "debrief.next",
                Row.Mark.GOOD,
                dress.words().say(debrief.nextGuidance().words()),
                List.of());
    }

    List<Row> rows() {
        return List.copyOf(rows);
    }

    /** The decision behind a line, if it is one. */
    Optional<Decision> decision(int row) {
        return decisions.get(row);
    }

    private void add(String state, Row.Mark mark, String title, List<String> detail) {
        line(dress.text(state), mark, title, detail);
    }

    private void line(String state, Row.Mark mark, String title, List<String> detail) {
        rows.add(new Row(state, mark, title, String.join("\n", detail)));
        decisions.add(Optional.empty());
    }

    private String say(Phrase phrase) {
        return dress.words().say(phrase);
    }

    private void hidden() {
        if (debrief.hidden().isEmpty()) {
            add("debrief.hidden", Row.Mark.GOOD, dress.text("debrief.nothing"), List.of());
        }
        double arrived = debrief.session().scenario().start().arrivesAtHour();
        for (HiddenFault each : debrief.hidden()) {
            String since = each.fromHours() <= arrived
                    ? dress.text("debrief.before")
                    : dress.text("debrief.since", clock.when(each.fromHours()));
            add("debrief.hidden", Row.Mark.MIND, each.words(), List.of(since));
        }
    }

    private void goals() {
        for (GoalCheck each : debrief.outcome().goals()) {
            add(
                    "debrief.goal." + each.verdict(),
                    switch (each.verdict()) {
                        case MET -> Row.Mark.DONE;
                        case MISSED -> Row.Mark.BAD;
                        case NOT_PLAYED -> Row.Mark.MIND;
                    },
                    say(each.what()),
                    List.of());
        }
    }

    private void decision(Decision each) {
        List<String> detail = new ArrayList<>();
        detail.add(dress.text("debrief.adviser", each.advice().what()));
        each.known().forEach(known -> detail.add(dress.text("debrief.known", known)));
        detail.add(dress.text("debrief.because", each.advice().why().line()));
        detail.add(dress.text(
                "debrief.whatIf",
                Quantity.of(each.whatIf().hoursInBand() / 24, Unit.DAY),
                Quantity.of(debrief.outcome().hoursInBand() / 24, Unit.DAY)));
        add(
                each.agrees() ? "debrief.agreed" : "debrief.otherwise",
                each.agrees() ? Row.Mark.DONE : Row.Mark.MIND,
                dress.text("journal.line", clock.when(each.atHours()), each.did()),
                detail);
        decisions.set(decisions.size() - 1, Optional.of(each));
    }

    private void habit(ProcessPoint each) {
        Row.Mark mark = switch (each.verdict()) {
            case KEPT -> Row.Mark.DONE;
            case MISSED -> Row.Mark.BAD;
            case NO_OCCASION -> Row.Mark.GOOD;
        };
        line(say(each.verdict().words()), mark, say(each.habit().words()), List.of(say(each.reason())));
    }

    private void prediction(PredictionResult each) {
        List<String> detail = new ArrayList<>();
        detail.add(dress.text(
                "step.expected",
                each.prediction().level().levelWords(),
                each.prediction().foam().foamWords(),
                Quantity.of(each.prediction().times(), Unit.PLAIN),
                Quantity.of(each.prediction().sure(), Unit.SHARE)));
        if (each.judged()) {
            detail.add(dress.text(
                    "debrief.came",
                    each.level().levelWords(),
                    each.foam().foamWords(),
                    Quantity.of(each.factor(), Unit.PLAIN)));
            detail.add(say(each.why()));
        } else {
            detail.add(dress.text("debrief.tooSoon"));
        }
        detail.add(say(debrief.predictionScore().words()));
        add(
                !each.judged() ? "debrief.said" : each.hit() ? "debrief.saidRight" : "debrief.saidWrong",
                !each.judged() ? Row.Mark.GOOD : each.hit() ? Row.Mark.DONE : Row.Mark.MIND,
                dress.text(
                        "journal.line", clock.when(each.atHours()), each.act().words()),
                detail);
    }

    private void view(ViewScore each) {
        List<String> detail = new ArrayList<>();
        each.view()
                .faults()
                .shares()
                .forEach((cause, share) -> detail.add(
                        dress.text("step.share", Phrase.of(cause.nameKey()), Quantity.of(share, Unit.SHARE))));
        add(
                "debrief.view",
                Row.Mark.GOOD,
                dress.text("debrief.viewScore", clock.when(each.atHours()), Quantity.of(each.onTruth(), Unit.SHARE)),
                detail);
    }

    private void question(QuestionResult each) {
        String state = each.right().isEmpty()
                ? "debrief.asked"
                : each.right().get() ? "debrief.answeredRight" : "debrief.answeredWrong";
        Row.Mark mark = each.right().isEmpty() ? Row.Mark.GOOD : each.right().get() ? Row.Mark.DONE : Row.Mark.MIND;
        add(state, mark, each.question().ask(), List.of(each.question().why()));
    }
}
