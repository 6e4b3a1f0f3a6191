package io.github.weirwise.setup;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Warning;
import java.util.List;
import java.util.Optional;

/**
 * The answer to one question.
 *
 * @param question what was asked
 * @param fit how it fits
 * @param asked the question in words
 * @param sentence the answer in words
 * @param number the computed number
 * @param limit what it is held against
 * @param margin how much is left before the limit, in the number's unit; negative when it is passed
 * @param source whose formula or custom it rests on
 * @param remedy what to change; empty when it fits
 * @param cautions what to mind, gravest first
 */
public record FitAnswer(
        Question question,
        Fit fit,
        Phrase asked,
        Phrase sentence,
        Quantity number,
        Quantity limit,
        Quantity margin,
        Phrase source,
        Optional<Phrase> remedy,
        List<Warning> cautions) {
    /** Copies and ranks the cautions. */
    public FitAnswer {
        cautions = Warning.ranked(cautions);
    }

    /** With what belongs to the question in its words. */
    FitAnswer(
            Question question,
            Fit fit,
            Quantity number,
            Quantity limit,
            Quantity margin,
            Phrase sentence,
            List<Warning> cautions) {
        this(
                question,
                fit,
                question.asked(),
                sentence,
                number,
                limit,
                margin,
                question.source(),
                fit == Fit.FITS ? Optional.empty() : Optional.of(question.remedy()),
                cautions);
    }
}
