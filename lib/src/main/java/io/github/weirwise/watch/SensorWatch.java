package io.github.weirwise.watch;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.watch.Attention.Matter;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Watches the sensors of one unit. Give it every value; now and then it gives back a call for a person.
 *
 * <p>It is no alarm: a flood takes minutes, and values are condensed over {@link WatchOptions#window()}. A float switch that
 * stops the pump belongs in every sump. Not thread-safe: one thread at a time. Memory does not grow with the stream.
 *
 * @since 0.1
 */
public final class SensorWatch {
    private static final String BY = "sensors";

    private final UnitBook book;
    private final Counsel counsel;
    private final WatchOptions options;
    private final StreamTime time;
    private final Silence silence;
    private final ReadingNeed readingNeed;
    private final CallNeed callNeed;
    private SensorWindow window;
    private long values;
    private long unsound;
    private long jumps;
    private long readings;
    private long consultations;
    private long calls;

    /**
     * A watch that has seen nothing yet.
     *
     * @param book where the unit's journal is kept
     * @param counsel who is asked
     * @param options how to condense and when to call
     */
    public SensorWatch(UnitBook book, Counsel counsel, WatchOptions options) {
        this.book = Objects.requireNonNull(book, "book");
        this.counsel = Objects.requireNonNull(counsel, "counsel");
        this.options = Objects.requireNonNull(options, "options");
        time = new StreamTime(options.window(), options.longestGap());
        silence = new Silence(options.silentAfter());
        readingNeed = new ReadingNeed(options.readEvery());
        callNeed = new CallNeed(options);
    }

    /**
     * Takes one value.
     *
     * @return calls for a person, mostly none
     */
    public List<Attention> take(SensorValue value) {
        values++;
        List<Attention> found = new ArrayList<>();
        StreamTime.Passage passage = time.pass(value);
        passage.jump().ifPresent(jump -> found.addAll(afterJump(jump)));
        for (SensorValue each : passage.values()) {
            found.addAll(inOrder(each));
        }
        calls += found.size();
        return found;
    }

    private List<Attention> inOrder(SensorValue value) {
        List<Attention> found = closeWindow(value.at());
        if (isSound(value)) {
            if (window == null) {
                window = new SensorWindow(value.at());
            }
            window.add(value.kind(), value.value());
            silence.heard(value.kind(), value.at());
        } else {
            unsound++;
        }
        for (SensorKind kind : silence.newlySilent(value.at())) {
            found.add(call(
                    value.at(),
                    Matter.SENSOR_SILENT,
                    Phrase.of("watch.silent", kind.words(), hours(silence.silentFor(kind, value.at())))));
        }
        return found;
    }

    private static boolean isSound(SensorValue value) {
        try {
            value.kind().observation(value.value());
            return true;
        } catch (OutOfRangeException nonsense) {
            return false;
        }
    }

    private List<Attention> closeWindow(Instant at) {
        List<Attention> found = new ArrayList<>();
        if (window != null && !at.isBefore(window.start().plus(options.window()))) {
            Map<SensorKind, Double> medians = window.medians(options.fewestValues());
            Instant end = window.start().plus(options.window());
            window = null;
            if (readingNeed.isWorthTelling(end, medians)) {
                write(end, medians);
                consult(at).ifPresent(found::add);
            }
        }
        return found;
    }

    private void write(Instant at, Map<SensorKind, Double> medians) {
        List<Observation> observations = medians.entrySet().stream()
                .map(each -> each.getKey().observation(each.getValue()))
                .toList();
        book.add(new Reading(at, BY, observations));
        readingNeed.told(at, medians);
        readings++;
    }

    private Optional<Attention> consult(Instant at) {
        Advice advice = counsel.advise(book.journal(), at);
        consultations++;
        return callNeed.matter(advice, at).map(matter -> new Attention(at, matter, advice.what(), Optional.of(advice)));
    }

    private List<Attention> afterJump(StreamTime.Jump jump) {
        jumps++;
        silence.restart(jump.to());
        return jump.isBack() ? afterJumpBack(jump) : afterGap(jump);
    }

    private List<Attention> afterJumpBack(StreamTime.Jump jump) {
        window = null;
        readingNeed.forgetTimes();
        callNeed.forgetTimes();
        Quantity back = hours(Duration.between(jump.to(), jump.from()));
        return List.of(call(jump.to(), Matter.CLOCK_SET_BACK, Phrase.of("watch.clockSetBack", back)));
    }

    private List<Attention> afterGap(StreamTime.Jump jump) {
        List<Attention> found = closeWindow(jump.to());
        Duration gap = Duration.between(jump.from(), jump.to());
        if (gap.compareTo(options.silentAfter()) >= 0) {
            found.add(call(jump.to(), Matter.GAP, Phrase.of("watch.gap", hours(gap))));
        }
        return found;
    }

    private static Attention call(Instant at, Matter matter, Phrase text) {
        return new Attention(at, matter, text, Optional.empty());
    }

    private static Quantity hours(Duration duration) {
        return Quantity.of(duration.toSeconds() / 3600.0, Unit.HOUR);
    }

    /** What was done so far. */
    public WatchCounts counts() {
        return new WatchCounts(values, unsound, time.passedOver(), jumps, readings, consultations, calls);
    }
}
