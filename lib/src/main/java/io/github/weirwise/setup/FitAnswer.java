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
 * @param number the computed number
 * @param limit what it is held against
 * @param margin how much is left before the limit, in the number's unit; negative when it is passed
 * @param sentence the answer in words
 * @param cautions what to mind, gravest first
 */
public record FitAnswer(
        Question question,
        Fit fit,
        Quantity number,
        Quantity limit,
        Quantity margin,
        Phrase sentence,
        List<Warning> cautions) {
    /** Copies and ranks the cautions. */
    public FitAnswer {
        cautions = Warning.ranked(cautions);
    }

    /** Whose formula or custom it rests on. */
    public Phrase source() {
        return question.source();
    }

    /** What to change; empty when it fits. */
    public Optional<Phrase> remedy() {
        return fit == Fit.FITS ? Optional.empty() : Optional.of(question.remedy());
    }
}
