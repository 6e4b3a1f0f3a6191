package io.github.weirwise.demo.look;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Expectation;
import io.github.weirwise.advice.Step;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;

/** What an advice expects; a step that is only a look changes nothing, so it has no chance of being on target. */
public final class ExpectWords {
    private ExpectWords() {}

    /** The line under the step. */
    public static Phrase of(Advice advice) {
        Expectation expected = advice.expectation();
        QuantityRange level = QuantityRange.of(expected.submergenceMm(), Unit.MILLIMETRE);
        QuantityRange amount = QuantityRange.of(expected.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY);
        Phrase colour = colour(expected.darknessPtCo());
        return advice.step() instanceof Step.Look
                ? Words.phrase("expect.look", level, amount, colour)
                : Words.phrase(
                        "expect.line", level, amount, colour, Quantity.of(expected.chanceOnTarget(), Unit.CHANCE));
    }

    /** In the words that stand on the swatches. */
    private static Phrase colour(Range ptCo) {
        DarknessWord palest = DarknessWord.of(ptCo.low());
        DarknessWord darkest = DarknessWord.of(ptCo.high());
        Phrase word = Words.phrase("darkness.short." + palest);
        return palest == darkest
                ? word
                : Words.phrase("expect.colours", word, Words.phrase("darkness.short." + darkest));
    }
}
