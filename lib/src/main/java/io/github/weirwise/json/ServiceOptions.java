package io.github.weirwise.json;

import io.github.weirwise.advice.AdviserOptions;
import io.github.weirwise.advice.Efforts;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.UnitSystem;
import io.github.weirwise.report.WrongValueException;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * What a request may say of how it wants to be answered; everything may be left out.
 *
 * @param cannotMeasure readings that cannot be taken at this unit; the adviser never asks for one
 * @param canMeasure readings that can be taken here though few can (the creep of the foam)
 * @param efforts what things are worth to this keeper
 * @param units in which the words are written; numbers outside the words are always metric
 * @param language of the words, a BCP 47 tag; English where there is no translation
 * @param detail how much is told
 */
record ServiceOptions(
        List<LookKind> cannotMeasure,
        List<LookKind> canMeasure,
        Efforts efforts,
        UnitSystem units,
        String language,
        Detail detail) {
    static final ServiceOptions USUAL =
            new ServiceOptions(List.of(), List.of(), Efforts.USUAL, UnitSystem.METRIC, "en", Detail.FULL);

    /** How much of an answer is wanted. */
    enum Detail {
        /** Everything, with the reasons and the numbers behind them. */
        FULL,
        /** The step, its words, when to look, what to expect, and the cautions. */
        STEP
    }

    private static final int LONGEST_TAG = 35;

    /** Rejects a language that is no tag. */
    ServiceOptions {
        if (language.length() > LONGEST_TAG || !language.matches("[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*")) {
            throw new WrongValueException(
                    "language",
                    Phrase.of("json.noLanguage", Quote.plain(language, LONGEST_TAG)),
                    Phrase.of("json.writeLanguage"));
        }
    }

    AdviserOptions adviser() {
        Set<LookKind> looks = EnumSet.copyOf(AdviserOptions.DEFAULT.looks());
        looks.addAll(canMeasure);
        cannotMeasure.forEach(looks::remove);
        return AdviserOptions.DEFAULT.withLooks(looks).withEfforts(efforts);
    }

    PhraseBook book() {
        return new PhraseBook(Locale.forLanguageTag(language), units);
    }
}
