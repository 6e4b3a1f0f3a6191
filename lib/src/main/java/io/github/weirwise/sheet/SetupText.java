package io.github.weirwise.sheet;

import io.github.weirwise.report.Band;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.setup.BreakInStage;
import io.github.weirwise.setup.FitAnswer;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.setup.Question;
import io.github.weirwise.setup.StartUpPlan;
import io.github.weirwise.setup.StartUpStep;

/**
 * What is said before a unit runs as plain text: a fit check with number, margin, source, what to change and cautions, and a start-up plan
 * with what to do, what to see, what to do if not. Lines end with a line feed.
 *
 * @param book language and units
 */
public record SetupText(PhraseBook book) {
    /** A fit check: the verdict, then every answer. */
    public String of(FitCheck check) {
        StringBuilder text = new StringBuilder(check.installation().name()).append('\n');
        text.append(book.say(check.summary())).append('\n');
        for (FitAnswer answer : check.answers()) {
            Phrase fit = Phrase.of("setup.fit." + answer.fit());
            text.append('\n').append(book.say(answer.question().asked()));
            text.append(" - ").append(book.say(fit)).append('\n');
            line(text, answer.sentence());
            line(text, Phrase.of("sheet.fit.figures", answer.number(), answer.limit(), answer.margin()));
            line(text, Phrase.of("sheet.fit.source", answer.source()));
            answer.remedy().ifPresent(remedy -> line(text, Phrase.of("sheet.fit.change", remedy)));
            answer.cautions().forEach(caution -> text.append("  ").append(said(caution)));
        }
        if (!check.notAsked().isEmpty()) {
            Phrase left = Phrase.of(
                    "setup.notAsked",
                    check.notAsked().stream().map(Question::asked).toList());
            text.append('\n').append(book.say(left)).append('\n');
        }
        return text.toString();
    }

    /** A start-up plan: warnings, every step with its caution, then the break-in. */
    public String of(StartUpPlan plan) {
        Phrase title =
                Phrase.of("sheet.start.title", plan.check().installation().name());
        StringBuilder text = new StringBuilder(book.say(title)).append('\n');
        plan.warnings().forEach(warning -> text.append(said(warning)));
        for (StartUpStep step : plan.steps()) {
            text.append('\n').append(step.order()).append(". ");
            text.append(book.say(step.todo())).append('\n');
            line(text, Phrase.of("sheet.start.see", step.see()));
            line(text, Phrase.of("sheet.start.ifNot", step.ifNot()));
            text.append("  ").append(said(step.caution()));
        }
        text.append('\n').append(book.say(Phrase.of("sheet.start.breakIn"))).append('\n');
        for (BreakInStage stage : plan.breakIn()) {
            line(text, Phrase.of("sheet.start.stage", Band.of(stage.days(), Unit.DAY), stage.expect()));
        }
        return text.toString();
    }

    private String said(Warning warning) {
        return book.say(Phrase.of("sheet.severity." + warning.severity())) + ": " + book.say(warning) + '\n';
    }

    private void line(StringBuilder text, Phrase words) {
        text.append("  ").append(book.say(words)).append('\n');
    }
}
