package io.github.weirwise.lab.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.lab.InventedJournal;
import io.github.weirwise.reading.AdviceGiven;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.score.Bell;
import io.github.weirwise.score.JournalScore;
import io.github.weirwise.score.Scored;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class JournalScoreTest {
    private final InventedJournal invented = InventedJournal.of(1);

    private JournalScore scored(Journal journal) {
        return JournalScore.of(invented.unit(), invented.start(), journal);
    }

    /** The first readings only: a score takes an advice a reading. */
    private Journal first(int entries) {
        return new Journal(invented.journal().entries().subList(0, entries));
    }

    @Test
    void everyAmountButTheFirstAndFullOnesIsForecast() {
        Journal journal = first(30);
        long cups = journal.all(Reading.class).stream()
                .flatMap(reading -> reading.find(Observation.CupVolume.class).stream())
                .filter(cup -> !cup.full())
                .count();
        assertThat(scored(journal).amounts()).hasSize((int) cups - 1);
    }

    @Test
    void whatComesLaterDoesNotChangeAForecast() {
        List<Scored> few = scored(first(16)).amounts();
        List<Scored> more = scored(first(24)).amounts();
        assertThat(more.size()).isGreaterThan(few.size());
        assertThat(more.subList(0, few.size())).isEqualTo(few);
    }

    @Test
    void aForecastIsScoredByHand() {
        // Stated 80 % from -1 to 1: deviation 1/1.28155 = 0.78031; with a scatter of 0.22 it is 0.81073.
        Bell bell = Bell.of(-1, 1, 0.22);
        assertThat(bell.deviation()).isCloseTo(0.81073, within(1e-4));
        // At its middle the density is 0.39894/0.81073 = 0.49208; 0.98 of it and 0.02/9 more.
        assertThat(bell.logScore(0, 9)).isCloseTo(Math.log(0.98 * 0.49208 + 0.02 / 9), within(1e-4));
        assertThat(bell.holds(1.03)).isTrue();
        assertThat(bell.holds(1.05)).isFalse();
        assertThat(bell.between(-1000, 0)).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void namesStayAtHome() {
        Instant at = invented.journal().entries().get(0).at();
        Journal named = invented.journal()
                .with(new Note(at, "Mrs. Somebody's tank"))
                .with(new AdviceGiven(at, "words", AdviceGiven.Followed.OPEN));
        Journal unnamed = Unnamed.of(named);
        assertThat(unnamed.entries()).hasSameSizeAs(invented.journal().entries());
        assertThat(unnamed.all(Reading.class)).allMatch(each -> each.by().matches("reader [12]"));
        assertThat(unnamed.entries().get(0).at().toString()).startsWith("2000-01-01T09:00");
        assertThat(Unnamed.of(invented.unit()).name()).isEqualTo("a unit");
        assertThat(unnamed.toString()).doesNotContain("Somebody", "shift", "words");
    }

    @Test
    void theScoreDoesNotHangOnNamesOrYear() {
        Journal journal = first(14);
        JournalScore named = scored(journal);
        JournalScore unnamed = scored(Unnamed.of(journal));
        assertThat(JournalScore.logScore(unnamed.amounts(), Scored::asLastTime, 9))
                .isEqualTo(JournalScore.logScore(named.amounts(), Scored::asLastTime, 9));
    }

    @Test
    void thePageShowsBothPlotsAndSaysWhenThereIsTooLittle() {
        String page = new ScorePage(scored(first(20))).html();
        assertThat(page).contains("<svg", "as last time", "Level").doesNotContain("NaN");
        assertThat(new ScorePage(scored(Journal.EMPTY)).html()).contains("Too few readings");
        assertThat(ScoreRun.resultLine(scored(Journal.EMPTY))).isEqualTo("result: forecasts=0");
    }
}
