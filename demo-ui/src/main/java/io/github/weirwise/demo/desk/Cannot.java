package io.github.weirwise.demo.desk;

import io.github.weirwise.advice.AdviserOptions;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Note;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Set;

/** Looks that cannot be taken at a unit, kept in its journal as notes, so that nobody is asked for them again. */
public final class Cannot {
    private static final String MARK = "Cannot be looked at here: ";
    private static final String AGAIN = "Can be looked at again: ";

    private Cannot() {}

    /** The note that a look cannot be taken. */
    public static Note note(Instant at, LookKind look) {
        return new Note(at, MARK + look.name());
    }

    /** The note that a look can be taken after all. */
    public static Note again(Instant at, LookKind look) {
        return new Note(at, AGAIN + look.name());
    }

    /** What cannot be taken by the newest notes. */
    public static Set<LookKind> in(Journal journal) {
        Set<LookKind> cannot = EnumSet.noneOf(LookKind.class);
        for (Note note : journal.all(Note.class)) {
            for (LookKind look : LookKind.values()) {
                if (note.text().strip().equals(MARK + look.name())) {
                    cannot.add(look);
                } else if (note.text().strip().equals(AGAIN + look.name())) {
                    cannot.remove(look);
                }
            }
        }
        return cannot;
    }

    /** The usual options without them. */
    public static AdviserOptions options(Journal journal) {
        Set<LookKind> looks = EnumSet.copyOf(AdviserOptions.DEFAULT.looks());
        looks.removeAll(in(journal));
        return AdviserOptions.DEFAULT.withLooks(looks);
    }
}
