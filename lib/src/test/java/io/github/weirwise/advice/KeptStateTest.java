package io.github.weirwise.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.weirwise.diagnosis.RandomJournals;
import io.github.weirwise.json.WeirwiseJson;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.WrongValueException;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What was kept of a journal, written out and extended, answers to the letter like the journal. */
class KeptStateTest {
    private static final SkimmerUnit UNIT = FirstRoundUnits.middle();
    private static final Settings START = UNIT.ratedSettings(RandomJournals.CREST_MM);
    private static final Adviser ADVISER = new Adviser(AdviserOptions.DEFAULT);

    @Test
    void ordinaryJournalsCutAnywhereAnswerAlike() {
        for (long seed = 0; seed < 60; seed++) {
            check(seed, UNIT, START, RandomJournals.of(seed).entries());
        }
    }

    @Test
    void whateverTheRecordsAllowAnswersAlike() {
        for (long seed = 0; seed < 400; seed++) {
            LegalDomain any = new LegalDomain(seed);
            check(seed, any.unit(), any.settings(), any.journal(12).entries());
        }
    }

    @Test
    void anEntryAtATimeAnswersLikeTheWhole() {
        List<JournalEntry> entries = RandomJournals.of(5).entries();
        KeptState kept = KeptState.of(UNIT, START, Journal.EMPTY);
        for (JournalEntry each : entries) {
            kept = KeptState.of(kept.extended(List.of(each)).toBytes());
        }
        assertThat(kept.entries()).isEqualTo(entries.size());
        Instant now = kept.newest().orElseThrow().plus(Duration.ofHours(3));
        assertThat(text(ADVISER.advise(kept, now)))
                .isEqualTo(text(ADVISER.advise(UNIT, START, new Journal(entries), now)));
    }

    private static void check(long seed, SkimmerUnit unit, Settings start, List<JournalEntry> entries) {
        SplittableRandom random = new SplittableRandom(seed);
        int cut = random.nextInt(entries.size() + 1);
        while (cut > 0
                && cut < entries.size()
                && entries.get(cut).at().equals(entries.get(cut - 1).at())) {
            cut--;
        }
        KeptState first = KeptState.of(unit, start, new Journal(entries.subList(0, cut)));
        List<JournalEntry> more = new ArrayList<>(entries.subList(cut, entries.size()));
        if (cut > 0) {
            more.add(entries.get(cut - 1)); // sent twice
        }
        KeptState kept =
                KeptState.of(KeptState.of(first.toBytes()).extended(more).toBytes());
        Instant newest = kept.newest().orElse(RandomJournals.START);
        Instant now =
                newest.isAfter(Instant.MAX.minusSeconds(90000)) ? newest : newest.plusSeconds(random.nextInt(90000));
        assertThat(text(ADVISER.advise(kept, now)))
                .as("seed %d cut at %d of %d", seed, cut, entries.size())
                .isEqualTo(text(ADVISER.advise(unit, start, new Journal(entries), now)));
    }

    private static String text(Advice advice) {
        return WeirwiseJson.writeAdvice(advice);
    }

    @Test
    void theSizeDoesNotGrowWithTheJournal() {
        List<JournalEntry> entries = new ArrayList<>();
        int[] bytes = new int[3];
        for (int i = 0; i < bytes.length; i++) {
            while (entries.size() < 40 * (1 + 10 * i)) {
                Instant at = RandomJournals.START.plus(Duration.ofDays(entries.size()));
                double ml = 200 + 100 * Math.sin(entries.size());
                entries.add(new Reading(
                        at,
                        "reader " + entries.size(),
                        List.of(
                                new Observation.FunnelLevel(12 + 3 * Math.cos(entries.size())),
                                new Observation.CupVolume(ml, 24, false))));
            }
            bytes[i] = KeptState.of(UNIT, START, new Journal(entries)).toBytes().length;
        }
        assertThat(bytes[2]).isLessThan(80_000).isLessThan((int) (1.1 * bytes[0]));
    }

    @Test
    void whatComesTooLateIsRefused() {
        Instant at = RandomJournals.START;
        WeirMove move = new WeirMove(at, 206, false);
        Reading reading = Reading.of(at, new Observation.FunnelLevel(12));
        KeptState kept = KeptState.of(UNIT, START, Journal.of(move));
        assertThatThrownBy(() -> kept.extended(List.of(new Service(at.minusSeconds(1), Part.AIR_LINE))))
                .isInstanceOf(WrongValueException.class)
                .hasMessageContaining("2026-03-02T07:59:59Z comes after one of 2026-03-02T08:00:00Z");
        assertThatThrownBy(() -> kept.extended(List.of(reading))).isInstanceOf(WrongValueException.class);
        assertThatThrownBy(() -> ADVISER.advise(kept, at.minusSeconds(1)))
                .isInstanceOf(WrongValueException.class)
                .hasMessageContaining("the present is 2026-03-02T07:59:59Z");
        assertThat(kept.extended(List.of(new Service(at, Part.AIR_LINE), move)).entries())
                .isEqualTo(2);
    }

    @Test
    void aChangedByteIsTold() {
        byte[] bytes = KeptState.of(UNIT, START, RandomJournals.of(2)).toBytes();
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 300; i++) {
            byte[] other = bytes.clone();
            other[random.nextInt(other.length)] ^= (byte) (1 << random.nextInt(8));
            assertThatThrownBy(() -> KeptState.of(other)).isInstanceOf(WrongValueException.class);
        }
        for (int length : new int[] {0, 3, 4, 5, 9, bytes.length - 1}) {
            byte[] shorter = java.util.Arrays.copyOf(bytes, length);
            assertThatThrownBy(() -> KeptState.of(shorter)).isInstanceOf(WrongValueException.class);
        }
    }
}
