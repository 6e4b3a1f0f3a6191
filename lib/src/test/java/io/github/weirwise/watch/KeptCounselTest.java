package io.github.weirwise.watch;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.advice.Adviser;
import io.github.weirwise.advice.AdviserOptions;
import io.github.weirwise.diagnosis.RandomJournals;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the counsel keeps changes no answer, however the journal grows. */
class KeptCounselTest {
    private static final SkimmerUnit UNIT = FirstRoundUnits.middle();
    private static final Settings START = UNIT.ratedSettings(RandomJournals.CREST_MM);

    @Test
    void aJournalThatGrowsIsAnsweredAsTheWholeOne() {
        Adviser adviser = new Adviser(AdviserOptions.DEFAULT);
        for (int seed = 0; seed < 12; seed++) {
            List<JournalEntry> all = RandomJournals.of(seed).entries();
            Counsel counsel = Counsel.of(UNIT, START, AdviserOptions.DEFAULT);
            for (int i = 1; i <= all.size(); i += 1 + seed % 4) {
                Journal journal = new Journal(all.subList(0, i));
                Instant now = all.get(i - 1).at();
                assertThat(counsel.advise(journal, now))
                        .as("seed %d, %d entries", seed, i)
                        .isEqualTo(adviser.advise(UNIT, START, journal, now));
            }
        }
    }

    /** A reading after a deed of the same instant, an entry in the past, and a journal that lost one. */
    @Test
    void whateverIsPutInBetweenIsAnsweredAsTheWholeOne() {
        Adviser adviser = new Adviser(AdviserOptions.DEFAULT);
        Counsel counsel = Counsel.of(UNIT, START, AdviserOptions.DEFAULT);
        Journal journal = RandomJournals.of(3);
        Instant newest = journal.entries().get(journal.entries().size() - 1).at();
        Instant middle = journal.entries().get(journal.entries().size() / 2).at();
        Journal deed = journal.with(new Service(newest, Part.NECK_AND_CUP));
        for (Journal each : List.of(
                journal,
                deed,
                deed.with(Reading.of(newest, new Observation.FunnelLevel(20))),
                deed.with(new Service(middle, Part.AIR_LINE)),
                journal)) {
            assertThat(counsel.advise(each, newest)).isEqualTo(adviser.advise(UNIT, START, each, newest));
        }
    }
}
