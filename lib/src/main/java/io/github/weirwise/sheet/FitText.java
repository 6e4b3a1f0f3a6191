package io.github.weirwise.sheet;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Warning;
import io.github.weirwise.setup.FitAnswer;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.setup.Question;
import java.util.List;

/**
 * A fit check as plain text: the verdict, then every answer with number, margin, source, what to change and cautions.
 *
 * @param book language and units
 */
public record FitText(PhraseBook book) {
    /** The whole text; lines end with a line feed. */
    public String of(FitCheck check) {
        StringBuilder text = new StringBuilder();
        text.append(check.installation().name()).append('\n');
        text.append(book.say(check.summary())).append('\n');
        for (FitAnswer answer : check.answers()) {
            text.append('\n');
            append(text, answer);
        }
        if (!check.notAsked().isEmpty()) {
            List<Phrase> left = check.notAsked().stream().map(Question::asked).toList();
            text.append('\n')
                    .append(book.say(Phrase.of("setup.notAsked", left)))
                    .append('\n');
        }
        return text.toString();
    }

    private void append(StringBuilder text, FitAnswer answer) {
        String fit = book.say(Phrase.of("setup.fit." + answer.fit()));
        text.append(book.say(answer.question().asked()))
                .append(" - ")
                .append(fit)
                .append('\n');
        line(text, book.say(answer.sentence()));
        line(text, book.say(Phrase.of("sheet.fit.figures", answer.number(), answer.limit(), answer.margin())));
        line(text, book.say(Phrase.of("sheet.fit.source", answer.source())));
        answer.remedy().ifPresent(remedy -> line(text, book.say(Phrase.of("sheet.fit.change", remedy))));
        for (Warning caution : answer.cautions()) {
            line(text, book.say(Phrase.of("sheet.severity." + caution.severity())) + ": " + book.say(caution));
        }
    }

    private static void line(StringBuilder text, String words) {
        text.append("  ").append(words).append('\n');
    }
}
