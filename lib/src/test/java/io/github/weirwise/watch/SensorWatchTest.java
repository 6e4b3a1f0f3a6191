package io.github.weirwise.watch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.atMost;
import static org.mockito.Mockito.inOrder;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.times;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import io.github.weirwise.advice.HoldReason;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.advice.SafeWay;
import io.github.weirwise.advice.Step;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.unit.Part;
import io.github.weirwise.watch.Attention.Matter;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.mockito.ArgumentCaptor;
import org.mockito.InOrder;

/** The watch with both its ports as mocks: what it writes, when it asks, when it calls. */
class SensorWatchTest {
    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");
    private static final Step HOLD = new Step.Hold(START, HoldReason.ON_TARGET);

    private final UnitBook book = mock(UnitBook.class);
    private final Counsel counsel = mock(Counsel.class);
    private final SensorWatch watch = new SensorWatch(book, counsel, WatchOptions.DEFAULT);
    private final List<Attention> calls = new ArrayList<>();

    @BeforeEach
    void theBookIsEmptyAndTheCounselHolds() {
        when(book.journal()).thenReturn(Journal.EMPTY);
        counselSays(HOLD, 0.8, 0.8);
    }

    @Test
    void aSteadyDayIsTwoReadingsAndNoCall() {
        steady(0, 24 * 60 + 20, 22, 150);
        verify(book, times(2)).add(any());
        verify(counsel, times(2)).advise(any(), any());
        assertThat(calls).isEmpty();
    }

    @Test
    void theReadingIsWrittenBeforeTheCounselIsAsked() {
        steady(0, 21, 22, 150);
        InOrder order = inOrder(book, counsel);
        order.verify(book).add(any());
        order.verify(book).journal();
        order.verify(counsel).advise(Journal.EMPTY, at(20));
    }

    @Test
    void aReadingHoldsTheMedianOfEachKindSoThatSpikesDoNotCount() {
        for (int minute = 0; minute < 20; minute++) {
            send(minute, SensorKind.FUNNEL_LEVEL, minute % 5 == 0 ? 90 : 22);
            send(minute, SensorKind.SALINITY, 35);
        }
        send(20, SensorKind.SALINITY, 35);
        ArgumentCaptor<Reading> reading = ArgumentCaptor.forClass(Reading.class);
        verify(book).add(reading.capture());
        assertThat(reading.getValue().at()).isEqualTo(at(20));
        assertThat(reading.getValue().by()).isEqualTo("sensors");
        assertThat(reading.getValue().observations())
                .containsExactlyInAnyOrder(new Observation.FunnelLevel(22), new Observation.Salinity(35));
    }

    @Test
    void aKindWithTooFewValuesIsLeftOut() {
        for (int minute = 0; minute <= 20; minute++) {
            send(minute, SensorKind.FUNNEL_LEVEL, 22);
        }
        send(19, SensorKind.AIR_FLOW, 150);
        send(21, SensorKind.FUNNEL_LEVEL, 22);
        ArgumentCaptor<Reading> reading = ArgumentCaptor.forClass(Reading.class);
        verify(book).add(reading.capture());
        assertThat(reading.getValue().observations()).containsExactly(new Observation.FunnelLevel(22));
    }

    @Test
    void aMoveBeyondTheScatterIsReadOnceItHasLasted() {
        steady(0, 60, 22, 150);
        verify(book, times(1)).add(any());
        steady(60, 90, 25, 150);
        verify(book, times(1)).add(any());
        steady(90, 125, 25, 150);
        verify(book, times(2)).add(any());
    }

    @Test
    void aMoveByFarIsReadAfterOneWindow() {
        steady(0, 60, 22, 150);
        steady(60, 85, 22, 60);
        verify(book, times(2)).add(any());
    }

    @Test
    void nonsenseIsCountedAndNotRead() {
        for (int minute = 0; minute < 60; minute++) {
            send(minute, SensorKind.SALINITY, minute % 2 == 0 ? -999 : Double.NaN);
        }
        verify(book, never()).add(any());
        assertThat(watch.counts().unsound()).isEqualTo(60);
        assertThat(watch.counts().values()).isEqualTo(60);
    }

    @Test
    void aStepThatPaysIsCalledForOnceADay() {
        counselSays(new Step.MoveWeir(4, 200, false), 0.3, 0.7);
        for (int day = 0; day < 3; day++) {
            steady(day * 1440, day * 1440 + 1440, 22 + 6 * (day % 2), 150);
        }
        assertThat(calls).extracting(Attention::matter).containsOnly(Matter.STEP);
        assertThat(calls).hasSize(3);
        assertThat(calls.get(0).advice()).isPresent();
        assertThat(calls.get(0).text()).isEqualTo(calls.get(0).advice().get().what());
    }

    @Test
    void aStepThatGainsLittleIsNotWorthACall() {
        counselSays(new Step.ServicePart(Part.AIR_LINE), 0.65, 0.7);
        steady(0, 1440, 22, 150);
        verify(counsel, times(2)).advise(any(), any());
        assertThat(calls).isEmpty();
    }

    @Test
    void aReadingByAPersonIsCalledForOnceADay() {
        counselSays(new Step.Look(LookKind.CUP_VOLUME), 0.5, 0.5);
        steady(0, 21, 22, 150);
        counselSays(new Step.Look(LookKind.AIR_LINE), 0.5, 0.5);
        steady(21, 13 * 60, 22, 150);
        assertThat(calls).extracting(Attention::matter).containsExactly(Matter.LOOK);
    }

    @Test
    void dangerIsCalledForOnceADayAndAgainWhenItComesBackAfterCalm() {
        counselSays(new Step.MakeSafe(SafeWay.STOP_THE_AIR, 0, 150, 0), 0, 0);
        steady(0, 30, 22, 150);
        steady(30, 13 * 60, 22, 150);
        assertThat(calls).extracting(Attention::matter).containsExactly(Matter.SAFETY);
        counselSays(HOLD, 0.8, 0.8);
        steady(13 * 60, 14 * 60, 22, 75);
        counselSays(new Step.MakeSafe(SafeWay.STOP_THE_AIR, 0, 150, 0), 0, 0);
        steady(14 * 60, 15 * 60, 22, 150);
        assertThat(calls).extracting(Attention::matter).containsExactly(Matter.SAFETY, Matter.LEAP, Matter.SAFETY);
    }

    @Test
    void aClockSetBackIsToldOfEachSensorAndTheStreamGoesOn() {
        steady(0, 30, 22, 150);
        steady(-3000, -2970, 22, 150);
        assertThat(calls).extracting(Attention::matter).containsExactly(Matter.SENSOR_CLOCK, Matter.SENSOR_CLOCK);
        assertThat(watch.counts().jumps()).isEqualTo(2);
        steady(-2970, -2970 + 13 * 60, 22, 150);
        verify(book, times(2)).add(any());
    }

    @Test
    void aLongGapIsToldAndAShortOneIsNot() {
        steady(0, 30, 22, 150);
        steady(30 + 5 * 60, 30 + 6 * 60, 22, 150);
        assertThat(calls).isEmpty();
        steady(30 + 30 * 60, 30 + 31 * 60, 22, 150);
        assertThat(calls).extracting(Attention::matter).containsExactly(Matter.SILENCE);
        assertThat(watch.counts().passedOver()).isZero();
    }

    @Test
    void aSensorThatFallsSilentIsToldOnceADayUntilItSpeaksAgain() {
        steady(0, 30, 22, 150);
        for (int minute = 30; minute < 3000; minute += 5) {
            send(minute, SensorKind.FUNNEL_LEVEL, wobbly(22, minute));
        }
        assertThat(calls).extracting(Attention::matter).containsExactly(Matter.SENSOR_SILENT, Matter.SENSOR_SILENT);
        assertThat(calls).allSatisfy(call -> assertThat(call.sensor()).contains(SensorKind.AIR_FLOW));
    }

    @Test
    void aBookThatFailsIsNotHidden() {
        when(book.journal()).thenThrow(new IllegalStateException("disk full"));
        assertThatThrownBy(() -> steady(0, 30, 22, 150)).hasMessage("disk full");
    }

    @Test
    void aMillionValuesAskTheCounselAFewTimesOnly() {
        for (int second = 0; second < 250_000; second++) {
            Instant at = START.plusSeconds(second);
            for (SensorKind kind : List.of(
                    SensorKind.FUNNEL_LEVEL, SensorKind.AIR_FLOW, SensorKind.RETURN_FLOW, SensorKind.SALINITY)) {
                calls.addAll(watch.take(new SensorValue(at, kind, 30 + second % 7 * 0.1)));
            }
        }
        assertThat(watch.counts().values()).isEqualTo(1_000_000);
        verify(counsel, atMost(8)).advise(any(), any());
    }

    @Test
    void whatWasDoneIsCounted() {
        counselSays(new Step.Look(LookKind.AIR_LINE), 0.5, 0.5);
        steady(0, 30, 22, 150);
        send(30, SensorKind.SALINITY, -1);
        assertThat(watch.counts()).isEqualTo(new WatchCounts(61, 1, 0, 0, 1, 1, 1));
        send(5000, SensorKind.SALINITY, 35);
        steady(31, 32, 22, 150);
        assertThat(watch.counts()).isEqualTo(new WatchCounts(64, 1, 0, 0, 1, 1, 1));
    }

    @Test
    void aSilenceIsToldInHours() {
        steady(0, 30, 22, 150);
        for (int minute = 30; minute < 800; minute += 5) {
            send(minute, SensorKind.FUNNEL_LEVEL, wobbly(22, minute));
        }
        assertThat(calls)
                .singleElement()
                .satisfies(call ->
                        assertThat(PhraseBook.ENGLISH_METRIC.say(call.text())).contains("the air flow", "12 h"));
    }

    @Test
    void aMoveBackToWhatWasTellsNothing() {
        steady(0, 60, 22, 150);
        steady(60, 80, 25, 150);
        steady(80, 100, 22, 150);
        steady(100, 120, 25, 150);
        steady(120, 140, 22, 150);
        verify(book, times(1)).add(any());
    }

    @Test
    void optionsThatContradictEachOtherAreRefused() {
        assertThatThrownBy(() -> options(180, 60, 240, 700, 0)).hasMessageContaining("readEvery");
        assertThatThrownBy(() -> options(180, 700, 60, 700, 0)).hasMessageContaining("longestGap");
        assertThatThrownBy(() -> options(20, 700, 120, 60, 0)).hasMessageContaining("silentAfter");
        assertThatThrownBy(() -> options(20, 700, 120, 700, -1)).hasMessageContaining("remindAfter");
        assertThat(options(20, 20, 20, 20, 0).window()).isEqualTo(Duration.ofMinutes(20));
    }

    private static WatchOptions options(int window, int readEvery, int longestGap, int silentAfter, int remindAfter) {
        return new WatchOptions(
                Duration.ofMinutes(window),
                Duration.ofMinutes(readEvery),
                Duration.ofMinutes(longestGap),
                Duration.ofMinutes(silentAfter),
                Duration.ofMinutes(remindAfter),
                3,
                0.1);
    }

    private void counselSays(Step step, double now, double then) {
        when(counsel.advise(any(), any())).thenReturn(GivenAdvice.of(step, now, then));
    }

    /** Level and air every minute. */
    private void steady(int fromMinute, int untilMinute, double levelMm, double airLitresPerHour) {
        for (int minute = fromMinute; minute < untilMinute; minute++) {
            send(minute, SensorKind.FUNNEL_LEVEL, wobbly(levelMm, minute));
            send(minute, SensorKind.AIR_FLOW, wobbly(airLitresPerHour, minute));
        }
    }

    /** Nothing is the same to the last digit for long. */
    private static double wobbly(double value, int minute) {
        return value + 0.01 * Math.floorMod(minute, 3);
    }

    private void send(int minute, SensorKind kind, double value) {
        calls.addAll(watch.take(new SensorValue(at(minute), kind, value)));
    }

    private static Instant at(int minute) {
        return START.plusSeconds(60L * minute);
    }
}
