package io.github.weirwise.sheet;

import io.github.weirwise.report.Band;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.setup.BreakInStage;
import io.github.weirwise.setup.StartUpPlan;
import io.github.weirwise.setup.StartUpStep;

/**
 * A start-up plan as plain text: every step with what to do, what to see, what to do if not, and its caution.
 *
 * @param book language and units
 */
public record StartUpText(PhraseBook book) {
    /** The whole text; lines end with a line feed. */
    public String of(StartUpPlan plan) {
        StringBuilder text = new StringBuilder();
        text.append(book.say(Phrase.of(
                        "sheet.start.title", plan.check().installation().name())))
                .append('\n');
        for (Warning warning : plan.warnings()) {
            text.append(said(warning)).append('\n');
        }
        for (StartUpStep step : plan.steps()) {
            text.append('\n')
                    .append(step.order())
                    .append(". ")
                    .append(book.say(step.todo()))
                    .append('\n');
            line(text, Phrase.of("sheet.start.see", step.see()));
            line(text, Phrase.of("sheet.start.ifNot", step.ifNot()));
            text.append("   ").append(said(step.caution())).append('\n');
        }
        text.append('\n').append(book.say(Phrase.of("sheet.start.breakIn"))).append('\n');
        for (BreakInStage stage : plan.breakIn()) {
            Band days = Band.of(stage.days(), Unit.DAY);
            line(text, Phrase.of("sheet.start.stage", days, stage.expect()));
        }
        return text.toString();
    }

    private String said(Warning warning) {
        return book.say(Phrase.of("sheet.severity." + warning.severity())) + ": " + book.say(warning);
    }

    private void line(StringBuilder text, Phrase words) {
        text.append("   ").append(book.say(words)).append('\n');
    }
}
