package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A stream that keeps the belief and a call with the whole journal have to agree to the last digit. */
class BeliefExtendedTest {
    private static final SkimmerUnit UNIT = FirstRoundUnits.middle();
    private static final Settings START = UNIT.ratedSettings(RandomJournals.CREST_MM);

    @Test
    void entryByEntryIsTheSameAsTheWhole() {
        for (long seed = 0; seed < 12; seed++) {
            Journal journal = RandomJournals.of(seed);
            Belief kept = Belief.of(UNIT, START, Journal.EMPTY, RandomJournals.START);
            for (JournalEntry entry : journal.entries()) {
                kept = kept.extended(List.of(entry), entry.at());
            }
            Instant now = kept.now().plus(Duration.ofHours(9));
            assertThat(BeliefNumbers.of(kept.extended(List.of(), now)))
                    .as("seed %d", seed)
                    .isEqualTo(BeliefNumbers.of(Belief.of(UNIT, START, journal, now)));
        }
    }

    @Test
    void whatIsExtendedStaysAsItWas() {
        Journal journal = RandomJournals.of(3);
        List<JournalEntry> entries = journal.entries();
        Instant middle = entries.get(entries.size() / 2).at();
        Belief half = Belief.of(UNIT, START, journal.until(middle), middle);
        List<Double> before = BeliefNumbers.of(half);
        Instant end = entries.get(entries.size() - 1).at();
        half.extended(entries.subList(entries.size() / 2 + 1, entries.size()), end);
        assertThat(BeliefNumbers.of(half)).isEqualTo(before);
    }

    /** What was seen of a part before its service is struck out of the evidence of the later belief only. */
    @Test
    void aServiceInTheLaterBeliefLeavesTheEvidenceOfTheEarlierOne() {
        Belief before = Belief.of(
                UNIT,
                START,
                Journal.of(Reading.of(RandomJournals.START, new Observation.Inspection(Part.AIR_LINE, Finding.BAD))),
                RandomJournals.START);
        String told = String.valueOf(before.diagnosis(2));
        before.extended(
                List.of(new Service(RandomJournals.START.plusSeconds(60), Part.AIR_LINE)),
                RandomJournals.START.plusSeconds(60));
        assertThat(String.valueOf(before.diagnosis(2))).isEqualTo(told);
    }

    @Test
    void entriesFromAfterNowAreLeftOut() {
        Journal journal = RandomJournals.of(4);
        Instant middle = journal.entries().get(journal.entries().size() / 2).at();
        assertThat(BeliefNumbers.of(Belief.of(UNIT, START, journal, middle)))
                .isEqualTo(BeliefNumbers.of(Belief.of(UNIT, START, journal.until(middle), middle)));
    }
}
