package io.github.weirwise.watch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyLong;
import static org.mockito.ArgumentMatchers.argThat;
import static org.mockito.ArgumentMatchers.isA;
import static org.mockito.Mockito.doThrow;
import static org.mockito.Mockito.inOrder;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.times;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import io.github.weirwise.advice.HoldReason;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.advice.Step;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.watch.Attention.Matter;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Flow;
import java.util.concurrent.SubmissionPublisher;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.mockito.ArgumentCaptor;
import org.mockito.InOrder;

/** The contract of Flow, with publisher and subscriber as mocks, and one run with a real publisher. */
@SuppressWarnings("unchecked")
class WatchProcessorTest {
    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");

    private final UnitBook book = mock(UnitBook.class);
    private final Counsel counsel = mock(Counsel.class);
    private final Flow.Subscription publisher = mock(Flow.Subscription.class);
    private final Flow.Subscriber<Attention> subscriber = mock(Flow.Subscriber.class);
    private final WatchProcessor processor = new WatchProcessor(new SensorWatch(book, counsel, WatchOptions.DEFAULT));

    @BeforeEach
    void theCounselAlwaysWantsALook() {
        when(book.journal()).thenReturn(Journal.EMPTY);
        when(counsel.advise(any(), any())).thenReturn(GivenAdvice.of(new Step.Look(LookKind.AIR_LINE), 0.5, 0.5));
    }

    @Test
    void valuesAreAskedForInSmallBatches() {
        processor.onSubscribe(publisher);
        verify(publisher).request(64);
        send(0, 31);
        verify(publisher, times(1)).request(anyLong());
        send(31, 32);
        verify(publisher).request(32);
    }

    @Test
    void aCallWaitsUntilTheSubscriberWantsIt() {
        Flow.Subscription calls = subscribed();
        send(0, 30);
        verify(subscriber, never()).onNext(any());
        calls.request(1);
        verify(subscriber).onNext(argThat(call -> call.matter() == Matter.LOOK));
    }

    @Test
    void aSlowSubscriberGetsTheNewestOfEachMatterThePressingFirst() {
        Flow.Subscription calls = subscribed();
        send(0, 30);
        send(-9000, -8000);
        send(-20000, -19000);
        calls.request(10);
        ArgumentCaptor<Attention> told = ArgumentCaptor.forClass(Attention.class);
        verify(subscriber, times(2)).onNext(told.capture());
        assertThat(told.getAllValues()).extracting(Attention::matter).containsExactly(Matter.LOOK, Matter.SENSOR_CLOCK);
        assertThat(told.getAllValues().get(0).at()).as("the newest").isAfter(at(1000));
    }

    @Test
    void whatStillWaitsIsToldBeforeTheEnd() {
        Flow.Subscription calls = subscribed();
        send(0, 30);
        processor.onComplete();
        verify(subscriber, never()).onComplete();
        calls.request(1);
        InOrder order = inOrder(subscriber);
        order.verify(subscriber).onNext(any());
        order.verify(subscriber).onComplete();
    }

    @Test
    void aFailureOfTheCounselCancelsTheStreamAndIsPassedOn() {
        subscribed();
        RuntimeException failed = new IllegalStateException("no such unit");
        when(counsel.advise(any(), any())).thenThrow(failed);
        send(0, 30);
        verify(publisher).cancel();
        verify(subscriber).onError(failed);
        verify(subscriber, never()).onComplete();
    }

    @Test
    void afterCancellingNothingIsToldAndThePublisherIsCancelled() {
        Flow.Subscription calls = subscribed();
        calls.request(5);
        calls.cancel();
        verify(publisher).cancel();
        send(0, 30);
        processor.onComplete();
        verify(subscriber, never()).onNext(any());
        verify(subscriber, never()).onComplete();
        verify(counsel, never()).advise(any(), any());
    }

    @Test
    void oneCallIsToldForEachThatWasAskedFor() {
        Flow.Subscription calls = subscribed();
        calls.request(1);
        send(0, 30);
        send(-9000, -8980);
        verify(subscriber, times(1)).onNext(any());
        calls.request(1);
        verify(subscriber, times(2)).onNext(any());
    }

    @Test
    void endlessDemandStaysEndless() {
        Flow.Subscription calls = subscribed();
        calls.request(Long.MAX_VALUE);
        calls.request(Long.MAX_VALUE);
        send(0, 30);
        send(-9000, -8900);
        verify(subscriber, times(2)).onNext(any());
    }

    @Test
    void aSubscriberThatComesLateGetsWhatWaitsAndTheEnd() {
        processor.onSubscribe(publisher);
        send(0, 30);
        processor.onComplete();
        processor.subscribe(new Flow.Subscriber<>() {
            @Override
            public void onSubscribe(Flow.Subscription subscription) {
                subscriber.onSubscribe(subscription);
                subscription.request(1);
                verify(subscriber, never()).onNext(any());
            }

            @Override
            public void onNext(Attention call) {
                subscriber.onNext(call);
            }

            @Override
            public void onError(Throwable failed) {
                subscriber.onError(failed);
            }

            @Override
            public void onComplete() {
                subscriber.onComplete();
            }
        });
        InOrder order = inOrder(subscriber);
        order.verify(subscriber).onSubscribe(any());
        order.verify(subscriber).onNext(any());
        order.verify(subscriber).onComplete();
    }

    @Test
    void aSubscriberThatThrowsGetsNothingMore() {
        Flow.Subscription calls = subscribed();
        calls.request(9);
        RuntimeException broken = new IllegalStateException("broken");
        doThrow(broken).when(subscriber).onNext(any());
        assertThatThrownBy(() -> send(0, 30)).isSameAs(broken);
        verify(publisher).cancel();
        send(-9000, -8900);
        verify(subscriber, times(1)).onNext(any());
    }

    @Test
    void askingForNothingIsAnError() {
        Flow.Subscription calls = subscribed();
        calls.request(0);
        verify(subscriber).onError(isA(IllegalArgumentException.class));
        verify(publisher).cancel();
    }

    @Test
    void aSecondSubscriberOrPublisherIsRefused() {
        subscribed();
        Flow.Subscriber<Attention> second = mock(Flow.Subscriber.class);
        processor.subscribe(second);
        InOrder order = inOrder(second);
        order.verify(second).onSubscribe(any());
        order.verify(second).onError(isA(IllegalStateException.class));
        Flow.Subscription another = mock(Flow.Subscription.class);
        processor.onSubscribe(another);
        verify(another).cancel();
        verify(another, never()).request(anyLong());
    }

    @Test
    void betweenARealPublisherAndASubscriberThatIsSlow() throws InterruptedException {
        when(counsel.advise(any(), any()))
                .thenReturn(GivenAdvice.of(new Step.Hold(START, HoldReason.ON_TARGET), 0.8, 0.8))
                .thenReturn(GivenAdvice.of(new Step.Look(LookKind.AIR_LINE), 0.5, 0.5));
        List<Attention> told = new CopyOnWriteArrayList<>();
        CountDownLatch ended = new CountDownLatch(1);
        try (SubmissionPublisher<SensorValue> sensors = new SubmissionPublisher<>(Runnable::run, 16)) {
            sensors.subscribe(processor);
            processor.subscribe(new OneAtATime(told, ended));
            for (int minute = 0; minute < 3000; minute++) {
                sensors.submit(new SensorValue(at(minute), SensorKind.AIR_FLOW, 150 + Math.floorMod(minute, 3)));
            }
        }
        assertThat(ended.await(10, TimeUnit.SECONDS)).isTrue();
        assertThat(told).hasSize(2).extracting(Attention::matter).containsOnly(Matter.LOOK);
        assertThat(processor.counts().values()).isEqualTo(3000);
    }

    private record OneAtATime(List<Attention> told, CountDownLatch ended, Flow.Subscription[] own)
            implements Flow.Subscriber<Attention> {
        OneAtATime(List<Attention> told, CountDownLatch ended) {
            this(told, ended, new Flow.Subscription[1]);
        }

        @Override
        public void onSubscribe(Flow.Subscription subscription) {
            own[0] = subscription;
            subscription.request(1);
        }

        @Override
        public void onNext(Attention call) {
            told.add(call);
            own[0].request(1);
        }

        @Override
        public void onError(Throwable failed) {
            throw new AssertionError(failed);
        }

        @Override
        public void onComplete() {
            ended.countDown();
        }
    }

    private Flow.Subscription subscribed() {
        processor.onSubscribe(publisher);
        processor.subscribe(subscriber);
        ArgumentCaptor<Flow.Subscription> calls = ArgumentCaptor.forClass(Flow.Subscription.class);
        verify(subscriber).onSubscribe(calls.capture());
        return calls.getValue();
    }

    private void send(int fromMinute, int untilMinute) {
        for (int minute = fromMinute; minute < untilMinute; minute++) {
            processor.onNext(new SensorValue(at(minute), SensorKind.AIR_FLOW, 150 + Math.floorMod(minute, 3)));
        }
    }

    private static Instant at(int minute) {
        return START.plusSeconds(60L * minute);
    }
}
