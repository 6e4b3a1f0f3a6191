package io.github.weirwise.demo.desk;

import io.github.weirwise.advice.AdviserOptions;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Note;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

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

    /** The look that an entry says cannot be taken, if it is one of these notes. */
    public static Optional<LookKind> of(JournalEntry entry) {
        return find(entry, MARK);
    }

    private static Optional<LookKind> find(JournalEntry entry, String mark) {
        String text = entry instanceof Note note ? note.text().strip() : "";
        return Stream.of(LookKind.values())
                .filter(look -> text.equals(mark + look.name()))
                .findFirst();
    }

    /** What cannot be taken by the newest notes. */
    public static Set<LookKind> in(Journal journal) {
        Set<LookKind> cannot = EnumSet.noneOf(LookKind.class);
        for (Note note : journal.all(Note.class)) {
            of(note).ifPresent(cannot::add);
            find(note, AGAIN).ifPresent(cannot::remove);
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
