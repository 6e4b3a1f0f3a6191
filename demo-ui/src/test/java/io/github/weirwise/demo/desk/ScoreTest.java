package io.github.weirwise.demo.desk;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.Sample;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.LanternQuay;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Every forecast is made with no more than was known before the cup, and held against what came. */
class ScoreTest {
    private static final Instant START = Instant.parse("2026-03-02T08:00:00Z");

    private final List<Journal> asked = new ArrayList<>();
    /** Forecasts 20 to 30 mL/day, whatever it is told. */
    private final Adviser adviser = (unit, told, journal, now) -> {
        asked.add(journal);
        return Sample.RAISE_FOUR.advise(unit, told, journal, now);
    };

    private static JournalEntry cup(int day, double ml, boolean full) {
        return Reading.of(START.plus(Duration.ofDays(day)), new Observation.CupVolume(ml, 24, full));
    }

    private Score score(JournalEntry... entries) {
        var unit = LanternQuay.jetty();
        return Score.of(adviser, unit, unit.ratedSettings(200), new Journal(List.of(entries)));
    }

    @Test
    void cupsWithinTheRangeHeldAndFullOnesAreLeftOut() {
        Score score = score(cup(0, 25, false), cup(1, 24, false), cup(2, 600, true), cup(3, 240, false));
        assertThat(score.cups()).extracting(Score.Cup::came).containsExactly(24.0, 240.0);
        assertThat(score.cups()).extracting(Score.Cup::before).containsExactly(25.0, 24.0);
        assertThat(score.held()).isEqualTo(1);
        assertThat(score.cups().get(0).mlPerDay().low())
                .as("widened by the reading's scatter")
                .isLessThan(20);
        double middle = Math.sqrt(20 * 30);
        assertThat(score.offBy())
                .as("geometric middle of two cups")
                .isCloseTo(Math.sqrt(middle / 24 * 240 / middle), Offset.offset(1e-6));
        assertThat(score.lastOffBy()).isCloseTo(Math.sqrt(25.0 / 24 * 10), Offset.offset(1e-6));
    }

    @Test
    void noForecastKnowsItsOwnCupOrALaterOne() {
        score(cup(0, 25, false), cup(1, 24, false), cup(2, 26, false));
        assertThat(asked).extracting(journal -> journal.entries().size()).containsExactly(1, 2);
    }

    @Test
    void ofManyCupsTheLastAreLookedAt() {
        JournalEntry[] many = new JournalEntry[50];
        for (int day = 0; day < many.length; day++) {
            many[day] = cup(day, 25, false);
        }
        assertThat(score(many).cups()).hasSize(Score.MOST);
        assertThat(score(cup(0, 25, false)).cups()).isEmpty();
    }
}
