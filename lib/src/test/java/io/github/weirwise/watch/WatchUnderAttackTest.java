package io.github.weirwise.watch;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.advice.AdviserOptions;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.watch.Attention.Matter;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sensors as they fail in real rooms, with the library's own adviser behind the watch. */
class WatchUnderAttackTest {
    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");
    private static final int DAY = 1440;

    private final SkimmerUnit unit = LanternQuay.jetty();
    private final List<JournalEntry> entries =
            new ArrayList<>(List.of(Reading.of(START.minusSeconds(600), new Observation.CupVolume(240, 24, false))));
    private final List<Attention> calls = new ArrayList<>();
    private SensorWatch watch = watch(WatchState.NEW);

    private SensorWatch watch(WatchState state) {
        UnitBook book = new UnitBook() {
            @Override
            public Journal journal() {
                return new Journal(entries);
            }

            @Override
            public void add(Reading reading) {
                entries.add(reading);
            }
        };
        return new SensorWatch(
                book, Counsel.of(unit, unit.ratedSettings(205), AdviserOptions.DEFAULT), WatchOptions.DEFAULT, state);
    }

    private void send(double minute, SensorKind kind, double value) {
        calls.addAll(watch.take(new SensorValue(START.plusMillis(Math.round(minute * 60_000)), kind, value)));
    }

    /** Level as given, air as it should be, every five minutes. */
    private void play(int fromMinute, int untilMinute, IntToDoubleFunction level) {
        for (int minute = fromMinute; minute < untilMinute; minute += 5) {
            send(minute, SensorKind.FUNNEL_LEVEL, level.applyAsDouble(minute));
            send(minute + 0.1, SensorKind.AIR_FLOW, 150 + minute % 7);
        }
    }

    private static double calm(int minute) {
        return 22 + 0.1 * (minute % 7);
    }

    private void atMostOnceADayEach() {
        Map<String, Instant> last = new HashMap<>();
        for (Attention call : calls) {
            Instant before = last.put(call.matter() + " " + call.sensor(), call.at());
            boolean apart = before == null || !call.at().isBefore(before.plus(Duration.ofHours(24)));
            assertThat(apart || call.matter() == Matter.SAFETY)
                    .as(call.toString())
                    .isTrue();
        }
    }

    private List<Matter> matters() {
        return calls.stream().map(Attention::matter).distinct().toList();
    }

    @Test
    void aLevelThatLeapsFrom22To60IsCalledForWithTheThirdValue() {
        play(0, 2 * DAY, WatchUnderAttackTest::calm);
        calls.clear();
        for (int i = 0; i < 3; i++) {
            send(2 * DAY + i * 0.1, SensorKind.FUNNEL_LEVEL, 60);
        }
        assertThat(calls).hasSize(1);
        assertThat(calls.get(0).matter()).isIn(Matter.LEAP, Matter.SAFETY);
        assertThat(calls.get(0).advice()).isPresent();
        assertThat(PhraseBook.ENGLISH_METRIC.say(calls.get(0).text())).contains("60 mm");
    }

    @Test
    void silenceOfAllSensorsIsNoticedByTheTickAndRemindedOfOnceADay() {
        play(0, DAY, WatchUnderAttackTest::calm);
        calls.clear();
        for (int minute = DAY; minute < 31 * DAY; minute += 10) {
            calls.addAll(watch.tick(START.plusSeconds(60L * minute)));
        }
        assertThat(calls.stream()
                        .filter(call -> call.matter() == Matter.SILENCE)
                        .count())
                .isBetween(28L, 31L);
        assertThat(calls.get(0).at()).isBefore(START.plusSeconds(60L * (DAY + 13 * 60)));
        atMostOnceADayEach();
    }

    @Test
    void aStuckSensorIsCalledForAndLeftOut() {
        play(0, 2 * DAY, WatchUnderAttackTest::calm);
        calls.clear();
        play(2 * DAY, 5 * DAY, minute -> 23);
        assertThat(matters()).contains(Matter.SENSOR_STUCK);
        atMostOnceADayEach();
        Reading newest = (Reading) entries.get(entries.size() - 1);
        assertThat(newest.find(Observation.FunnelLevel.class)).isEmpty();
        assertThat(newest.find(Observation.AirFlow.class)).isPresent();
    }

    @Test
    void aBlindSensorIsCalledFor() {
        play(0, DAY, WatchUnderAttackTest::calm);
        calls.clear();
        play(DAY, 3 * DAY, minute -> minute % 2 == 0 ? Double.NaN : -9999);
        assertThat(matters()).contains(Matter.SENSOR_BLIND);
        atMostOnceADayEach();
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 20, 45, 60, 240})
    void aSensorThatJumpsToAndFroIsCalledForOnceADayAndDoesNotBuryTheJournal(int everyMinutes) {
        play(0, DAY, WatchUnderAttackTest::calm);
        int before = entries.size();
        calls.clear();
        play(DAY, 8 * DAY, minute -> calm(minute) + (minute / everyMinutes % 2 == 0 ? 0 : 40));
        assertThat(matters()).containsAnyOf(Matter.SENSOR_RESTLESS, Matter.LEAP);
        assertThat(entries.size() - before).as("readings in a week").isLessThan(7 * 10);
        atMostOnceADayEach();
    }

    /** Loggers send a value every ten minutes, or every hour. */
    @ParameterizedTest
    @ValueSource(ints = {10, 15, 30, 60, 100})
    void aSensorThatSpeaksSeldomIsHeard(int everyMinutes) {
        for (int minute = 0; minute < 7 * DAY; minute += everyMinutes) {
            send(minute, SensorKind.FUNNEL_LEVEL, calm(minute));
        }
        assertThat(entries.size()).as("readings in a week").isBetween(10, 40);
        assertThat(matters()).doesNotContain(Matter.SENSOR_RESTLESS, Matter.LEAP, Matter.SENSOR_SILENT);
        calls.clear();
        // Two more than three, since a window may end among them.
        for (int i = 0; i < 5; i++) {
            send(7 * DAY + i * everyMinutes, SensorKind.FUNNEL_LEVEL, 60);
        }
        assertThat(matters()).containsAnyOf(Matter.LEAP, Matter.SAFETY);
        calls.clear();
        int before = entries.size();
        for (int i = 0; i < 14 * DAY / everyMinutes; i++) {
            send(8 * DAY + i * everyMinutes, SensorKind.FUNNEL_LEVEL, calm(i) + (i % 2 == 0 ? 0 : 40));
        }
        assertThat(matters()).contains(Matter.SENSOR_RESTLESS);
        assertThat(entries.size() - before).as("readings in two weeks").isLessThan(14 * 10);
        atMostOnceADayEach();
    }

    @Test
    void sensorsWithClocksOfTheirOwnAreTakenTogether() {
        for (int minute = 0; minute < 4 * DAY; minute += 5) {
            send(minute, SensorKind.FUNNEL_LEVEL, calm(minute));
            send(minute - 600, SensorKind.AIR_FLOW, 150 + minute % 7);
            send(minute + 45, SensorKind.RETURN_FLOW, 2200 + minute % 7);
        }
        assertThat(matters()).contains(Matter.SENSOR_CLOCK).doesNotContain(Matter.SENSOR_SILENT, Matter.SILENCE);
        assertThat(watch.counts().passedOver()).isZero();
        atMostOnceADayEach();
        assertThat(entries.stream()
                        .filter(Reading.class::isInstance)
                        .map(Reading.class::cast)
                        .filter(each -> each.observations().size() == 3)
                        .count())
                .isBetween(5L, 12L);
    }

    /** Cut at any point and read again, a watch goes on as if nothing had been. */
    @Test
    void aRestartChangesNothing() {
        Random random = new Random(5);
        List<Object> sent = new ArrayList<>();
        for (int minute = 0; minute < 6 * DAY; minute += 5) {
            double level = calm(minute) + (minute > 3 * DAY ? 30 : 0) + random.nextGaussian();
            sent.add(new SensorValue(START.plusSeconds(60L * minute), SensorKind.FUNNEL_LEVEL, level));
            if (minute < 4 * DAY) {
                sent.add(new SensorValue(
                        START.plusSeconds(60L * minute - 7000), SensorKind.AIR_FLOW, 150 + random.nextInt(9)));
            }
            if (minute % 100 == 0) {
                sent.add(START.plusSeconds(60L * minute));
            }
        }
        List<Attention> whole = run(sent, 0);
        entries.subList(1, entries.size()).clear();
        watch = watch(WatchState.NEW);
        assertThat(run(sent, 37)).isEqualTo(whole);
        assertThat(whole).isNotEmpty();
    }

    private List<Attention> run(List<Object> sent, int restartEvery) {
        List<Attention> found = new ArrayList<>();
        for (int i = 0; i < sent.size(); i++) {
            if (restartEvery > 0 && i % restartEvery == 0) {
                watch = watch(watch.state());
            }
            found.addAll(
                    sent.get(i) instanceof SensorValue value ? watch.take(value) : watch.tick((Instant) sent.get(i)));
        }
        return found;
    }
}
