package io.github.weirwise.advice;

import static io.github.weirwise.advice.Situations.NOW;
import static io.github.weirwise.advice.Situations.UNIT;
import static io.github.weirwise.advice.Situations.hoursAgo;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.Part;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Common practice: a meter that contradicts everything else is read again before anything is built on it. */
class ReadAgainTest {
    private static final double AIR = UNIT.ratedAirLitresPerHour();

    private static Belief after(double... airLitresPerHour) {
        List<JournalEntry> entries = new ArrayList<>();
        for (int day = 3; day > 0; day--) {
            entries.add(Reading.of(
                    hoursAgo(24 * day),
                    new Observation.FunnelLevel(UNIT.target().submergenceMm()),
                    new Observation.CupVolume(UNIT.target().skimmateMlPerDay(), 24, false)));
        }
        Instant at = hoursAgo(1);
        for (double air : airLitresPerHour) {
            entries.add(Reading.of(at, new Observation.AirFlow(air)));
            at = at.plusSeconds(600);
        }
        return Belief.of(UNIT, UNIT.ratedSettings(205), new Journal(entries), NOW);
    }

    @Test
    void oneReadingFarFromEverythingCountsForNothingYet() {
        Belief once = after(AIR / 60);
        assertThat(once.toReadAgain()).contains(Instrument.AIR_FLOW);
        assertThat(once.chanceOver(Part.AIR_LINE, 0.5)).isEqualTo(after().chanceOver(Part.AIR_LINE, 0.5));
    }

    @Test
    void readTwiceItIsBelieved() {
        Belief twice = after(AIR / 3, AIR / 3);
        assertThat(twice.toReadAgain()).isEmpty();
        assertThat(twice.chanceOver(Part.AIR_LINE, 0.5)
                        + twice.chanceOver(Part.INJECTOR_PUMP, 0.5)
                        + twice.chanceOver(Part.INJECTOR_NOZZLE, 0.5))
                .isGreaterThan(0.8);
    }

    @Test
    void readOtherwiseItIsForgotten() {
        Belief otherwise = after(AIR / 60, AIR);
        assertThat(otherwise.toReadAgain()).isEmpty();
        assertThat(otherwise.chanceOver(Part.AIR_LINE, 0.5)).isLessThan(0.1);
    }

    @Test
    void whatMayWellBeIsTakenAtOnce() {
        assertThat(after(0.8 * AIR).toReadAgain()).isEmpty();
    }
}
