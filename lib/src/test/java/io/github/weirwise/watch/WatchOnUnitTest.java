package io.github.weirwise.watch;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.advice.AdviserOptions;
import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.diagnosis.Diagnosis;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.watch.Attention.Matter;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Sensors on a unit as the model sees it, with the library's own adviser: quiet while all is well, a call when air dwindles. */
class WatchOnUnitTest {
    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");
    private static final SkimmerUnit UNIT = FirstRoundUnits.middle();

    private final Settings rated = UNIT.ratedSettings(205);
    private final Random random = new Random(3);
    private final List<JournalEntry> entries = new ArrayList<>();
    private final List<Attention> calls = new ArrayList<>();
    private final SensorWatch watch = new SensorWatch(
            new UnitBook() {
                @Override
                public Journal journal() {
                    return new Journal(entries);
                }

                @Override
                public void add(Reading reading) {
                    entries.add(reading);
                }
            },
            Counsel.of(UNIT, rated, AdviserOptions.DEFAULT),
            WatchOptions.DEFAULT);

    @Test
    void aUnitOnTargetIsLeftInPeaceAndAirThatIsLostBitByBitIsCalledFor() {
        for (int day = 0; day < 7; day++) {
            day(day, rated);
        }
        assertThat(calls).as("calls in a good week").hasSizeLessThanOrEqualTo(1);
        assertThat(watch.counts().consultations())
                .as("consultations in a good week")
                .isLessThan(30);
        calls.clear();

        for (int day = 7; day < 11; day++) {
            day(day, rated.withAirLitresPerHour(150 - 12 * (day - 6)));
        }

        assertThat(calls).isNotEmpty();
        assertThat(calls).extracting(Attention::matter).containsAnyOf(Matter.STEP, Matter.LOOK);
        assertThat(calls).as("calls that think of the air").anyMatch(call -> {
            Diagnosis diagnosis = call.advice().orElseThrow().diagnosis();
            return diagnosis.probability(Cause.AIR_LINE_RESTRICTED) + diagnosis.probability(Cause.INJECTOR_PUMP_WORN)
                    > 0.5;
        });
    }

    /** A person empties the cup in the morning; the sensors speak every five minutes. */
    private void day(int day, Settings settings) {
        OperatingPoint point = OperatingPoint.of(UNIT, settings);
        Instant morning = START.plusSeconds(86_400L * day);
        double ml = point.skimmateMlPerDay() * Math.exp(0.1 * random.nextGaussian());
        entries.add(Reading.of(morning, new Observation.CupVolume(ml, 24, false)));
        for (int second = 0; second < 86_400; second += 300) {
            Instant at = morning.plusSeconds(second);
            send(at, SensorKind.FUNNEL_LEVEL, point.submergenceMm() + random.nextGaussian());
            send(at, SensorKind.AIR_FLOW, settings.airLitresPerHour() * (1 + 0.03 * random.nextGaussian()));
            send(at, SensorKind.RETURN_FLOW, settings.flowLitresPerHour() * (1 + 0.03 * random.nextGaussian()));
            send(at, SensorKind.SALINITY, 35 + 0.2 * random.nextGaussian());
        }
    }

    private void send(Instant at, SensorKind kind, double value) {
        calls.addAll(watch.take(new SensorValue(at, kind, value)));
    }
}
