package io.github.weirwise.demo.round;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.EntryWords;

/** What a look is called and how it is taken. */
final class LookWords {
    private LookWords() {}

    /** Its name: the part that is looked at, or what is measured. */
    static String name(LookKind look, Dress dress) {
        return look.part()
                .map(part -> dress.words().say(EntryWords.part(part)))
                .orElseGet(() -> dress.text("ask." + look));
    }

    /** How it is taken. */
    static String how(LookKind look, Dress dress) {
        return look.part().isPresent() ? dress.text("how.part") : dress.text("how." + look);
    }
}
