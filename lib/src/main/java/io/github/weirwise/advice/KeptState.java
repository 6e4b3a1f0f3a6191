package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.internal.kept.KeptBytes;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.WrongValueException;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All that a journal comes to, of a size that does not grow with it: what stands for the journal of a unit when its host does not
 * want to keep, or send, all of it. Extended by new entries it gives the same advice, to the letter, as the whole journal. Immutable.
 *
 * <p>Written out it is about 55 kB, most of it the covariances of the belief's branches. It can be read by the same version of the
 * library only; a host keeps its journal too, at least until the next version.
 *
 * @since 0.2
 */
public final class KeptState {
    /** Entries of the newest instant that are known again when they are sent twice. */
    private static final int KNOWN_AGAIN = 64;

    private final Noted noted;
    private final Belief belief;
    private final int entries;
    private final List<JournalEntry> newest;

    private KeptState(Noted noted, Belief belief, int entries, List<JournalEntry> newest) {
        this.noted = noted;
        this.belief = belief;
        this.entries = entries;
        this.newest = newest;
    }

    /**
     * What a whole journal comes to.
     *
     * @param unit nominal data of the unit
     * @param start settings as they were before the first entry
     * @param journal all of it
     */
    public static KeptState of(SkimmerUnit unit, Settings start, Journal journal) {
        return new KeptState(
                        Noted.nothing(unit, start), Belief.of(unit, start, Journal.EMPTY, Instant.EPOCH), 0, List.of())
                .extended(journal.entries());
    }

    /**
     * The state after further entries; one that was the newest and is sent again counts once.
     *
     * @param more in any order, none older than the newest so far
     * @throws WrongValueException if one is older, or a reading of an instant at which something was done already
     */
    public KeptState extended(List<JournalEntry> more) {
        List<JournalEntry> sorted = new Journal(more)
                .entries().stream()
                        .distinct()
                        .filter(each -> !newest.contains(each))
                        .toList();
        if (sorted.isEmpty()) {
            return this;
        }
        checkOrder(sorted.get(0));
        Instant last = sorted.get(sorted.size() - 1).at();
        List<JournalEntry> ofLast = new ArrayList<>();
        newest.stream().filter(each -> each.at().equals(last)).forEach(ofLast::add);
        sorted.stream().filter(each -> each.at().equals(last)).forEach(ofLast::add);
        return new KeptState(
                noted.after(sorted),
                belief.extended(sorted, last),
                entries + sorted.size(),
                List.copyOf(ofLast.subList(Math.max(0, ofLast.size() - KNOWN_AGAIN), ofLast.size())));
    }

    private void checkOrder(JournalEntry first) {
        if (newest.isEmpty() || first.at().isAfter(newest.get(0).at())) {
            return;
        }
        boolean older = first.at().isBefore(newest.get(0).at());
        boolean afterDeed = first instanceof Reading && newest.stream().anyMatch(each -> !(each instanceof Reading));
        if (older || afterDeed) {
            throw new WrongValueException(
                    "journal",
                    Phrase.of(
                            "advice.kept.older",
                            first.at().toString(),
                            newest.get(0).at().toString()),
                    Phrase.of("advice.kept.giveWhole"));
        }
    }

    /** When the newest entry was made. */
    public Optional<Instant> newest() {
        return newest.stream().findFirst().map(JournalEntry::at);
    }

    /** How many entries were taken in, one sent twice counted once. */
    public int entries() {
        return entries;
    }

    Noted noted() {
        return noted;
    }

    /** The belief at a moment that is not before the newest entry. */
    Belief belief(Instant now) {
        newest().filter(now::isBefore).ifPresent(at -> {
            throw new WrongValueException(
                    "now",
                    Phrase.of("advice.kept.nowOlder", now.toString(), at.toString()),
                    Phrase.of("advice.kept.giveWhole"));
        });
        return belief.extended(List.of(), now);
    }

    private record Written(Noted noted, byte[] belief, int entries, List<JournalEntry> newest) {
        private static final int LAYOUT = KeptBytes.layout(Written.class);
    }

    /** The state as bytes with a checksum. */
    public byte[] toBytes() {
        return KeptBytes.write(Written.LAYOUT, new Written(noted, belief.toBytes(), entries, newest));
    }

    /**
     * The state that was written.
     *
     * @param bytes what {@link #toBytes} gave in the same version of the library
     * @throws WrongValueException if they are anything else
     */
    public static KeptState of(byte[] bytes) {
        try {
            Written written = KeptBytes.read(Written.LAYOUT, Written.class, bytes);
            Belief belief = Belief.resumed(written.noted.unit(), written.belief);
            return new KeptState(written.noted, belief, written.entries, written.newest);
        } catch (IllegalArgumentException e) {
            throw new WrongValueException(
                    "state", Phrase.of("advice.kept.notOurs"), Phrase.of("advice.kept.giveWhole"));
        }
    }
}
