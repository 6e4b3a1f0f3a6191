package io.github.weirwise.watch;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Step;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Work;
import io.github.weirwise.unit.FoamState;
import io.github.weirwise.watch.Attention.Matter;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Watches the sensors of one unit. Give it every value, and a {@link #tick} now and then; sometimes it gives back a call for a
 * person. What the adviser says (its guard first, then the belief) decides whether a change is worth one; a sensor that is silent,
 * blind, stuck, restless or has a wrong clock is a matter of its own. Nobody is called twice a day for one matter.
 *
 * <p>It is no alarm: a float switch that stops the pump belongs in every sump. Not thread-safe: one thread at a time. Memory does
 * not grow with the stream; {@link #state} is all of it.
 *
 * @since 0.1
 */
public final class SensorWatch {
    private static final String BY = "sensors";
    /** More than this chance of a flood is a danger, whatever the step is. */
    private static final double FLOOD_CHANCE = 0.5;

    private final UnitBook book;
    private final Counsel counsel;
    private final WatchOptions options;
    private final Map<SensorKind, Sensor> sensors = new EnumMap<>(SensorKind.class);
    private final CallBook calls;
    private Instant time;
    private Instant windowStart;
    private Instant readAt;
    private Instant askedAt;
    private WatchCounts counts;

    /** A watch that has seen nothing yet. */
    public SensorWatch(UnitBook book, Counsel counsel, WatchOptions options) {
        this(book, counsel, options, WatchState.NEW);
    }

    /**
     * A watch that goes on where another one stopped.
     *
     * @param book where the unit's journal is kept
     * @param counsel who is asked
     * @param options how to condense and when to call
     * @param state what the other one left
     */
    public SensorWatch(UnitBook book, Counsel counsel, WatchOptions options, WatchState state) {
        this.book = Objects.requireNonNull(book, "book");
        this.counsel = Objects.requireNonNull(counsel, "counsel");
        this.options = Objects.requireNonNull(options, "options");
        time = state.time().orElse(null);
        windowStart = state.windowStart().orElse(null);
        readAt = state.readAt().orElse(null);
        askedAt = state.askedAt().orElse(null);
        state.sensors().forEach(each -> sensors.put(each.kind(), new Sensor(each, options)));
        calls = new CallBook(options.remindAfter(), state.calls());
        counts = state.counts();
    }

    /** All that is kept, to be written down. */
    public WatchState state() {
        return new WatchState(
                Optional.ofNullable(time),
                Optional.ofNullable(windowStart),
                Optional.ofNullable(readAt),
                Optional.ofNullable(askedAt),
                sensors.values().stream().map(Sensor::state).toList(),
                calls.calls(),
                counts);
    }

    /** What was done so far. */
    public WatchCounts counts() {
        return counts;
    }

    /**
     * Takes one value.
     *
     * @return calls for a person, mostly none
     */
    public List<Attention> take(SensorValue value) {
        Work.step();
        List<Attention> found = new ArrayList<>();
        Sensor sensor = sensors.computeIfAbsent(value.kind(), kind -> new Sensor(kind, options));
        counts = counts.plus(1, 0, 0, 0, 0, 0, 0);
        List<SensorValue> free = sensor.pass(value, time);
        if (sensor.clockStepped()) {
            counts = counts.plus(0, 0, 0, 1, 0, 0, 0);
            call(
                    Matter.SENSOR_CLOCK,
                    sensor,
                    Phrase.of("watch.clock", sensor.kind().words()),
                    found);
        }
        counts = counts.plus(0, 0, sensor.passedOver(), 0, 0, 0, 0);
        for (SensorValue each : free) {
            sensors.values().stream().filter(other -> other != sensor).forEach(Sensor::otherSpoke);
            found.addAll(pass(sensor.timeOf(each)));
            inOrder(sensor, each, found);
        }
        return counted(found);
    }

    /**
     * Lets time pass without a value, so that silence of all sensors is noticed and a step that waits is called for. Every few
     * minutes will do.
     *
     * @param now the host's time; one before the watch's own changes nothing
     */
    public List<Attention> tick(Instant now) {
        List<Attention> found = new ArrayList<>(pass(now));
        if (askedAt != null && !time.isBefore(askedAt.plus(options.remindAfter()))) {
            consult(Optional.empty(), found);
        }
        return counted(found);
    }

    private List<Attention> counted(List<Attention> found) {
        counts = counts.plus(0, 0, 0, 0, 0, 0, found.size());
        return found;
    }

    /** Time passes: a window that is over is closed, and what is wrong with the sensors is seen. */
    private List<Attention> pass(Instant now) {
        List<Attention> found = new ArrayList<>();
        boolean gap = time != null && now.isAfter(time.plus(options.longestGap()));
        if (time == null || now.isAfter(time)) {
            time = now;
        }
        silences(found);
        if (gap) {
            // No value could come meanwhile: each sensor's silence counts anew.
            sensors.values().forEach(each -> each.heard(time));
        }
        if (windowStart == null) {
            windowStart = time;
        }
        if (!time.isBefore(windowStart.plus(options.window()))) {
            closeWindow(windowStart.plus(options.window()), found);
            windowStart = time;
        }
        return found;
    }

    private void silences(List<Attention> found) {
        Collection<Sensor> all = sensors.values();
        List<Sensor> silent = all.stream().filter(each -> each.isSilent(time)).toList();
        if (!silent.isEmpty() && silent.size() == all.size()) {
            Duration least = silent.stream()
                    .map(each -> each.silentFor(time))
                    .min(Duration::compareTo)
                    .orElseThrow();
            if (calls.call(Matter.SILENCE, Optional.empty(), time)) {
                found.add(attention(
                        Matter.SILENCE, Optional.empty(), Phrase.of("watch.gap", hours(least)), Optional.empty()));
            }
            return;
        }
        for (Sensor each : silent) {
            Phrase text = Phrase.of("watch.silent", each.kind().words(), hours(each.silentFor(time)));
            call(Matter.SENSOR_SILENT, each, text, found);
        }
    }

    private void inOrder(Sensor sensor, SensorValue value, List<Attention> found) {
        if (!sensor.add(value.value(), sensor.timeOf(value))) {
            counts = counts.plus(0, 1, 0, 0, 0, 0, 0);
            return;
        }
        Optional<Double> before = sensor.told();
        sensor.leap()
                .filter(to -> !sensor.isRestless(time))
                .ifPresent(to -> leapt(sensor, before.orElseThrow(), to, found));
    }

    /** Something happened: it is written and the adviser asked at once. */
    private void leapt(Sensor sensor, double from, double to, List<Attention> found) {
        sensor.leapt(to, time);
        write(time, Map.of(sensor.kind(), to));
        Phrase text = Phrase.of(
                "watch.leap",
                sensor.kind().words(),
                Quantity.of(from, sensor.kind().unit()),
                Quantity.of(to, sensor.kind().unit()));
        consult(Optional.of(text), found);
    }

    private void closeWindow(Instant end, List<Attention> found) {
        Map<SensorKind, Double> medians = new EnumMap<>(SensorKind.class);
        boolean worth = readAt == null || !end.isBefore(readAt.plus(options.readEvery()));
        for (Sensor each : sensors.values()) {
            faults(each, found);
            Optional<Double> median = each.reading(time);
            if (median.isPresent()) {
                medians.put(each.kind(), median.get());
                worth |= each.hasMoved(median.get(), time);
            }
            each.closeWindow();
        }
        if (worth && !medians.isEmpty()) {
            write(end, medians);
            consult(Optional.empty(), found);
        }
    }

    private void faults(Sensor each, List<Attention> found) {
        if (each.isBlind(time)) {
            call(Matter.SENSOR_BLIND, each, Phrase.of("watch.blind", each.kind().words()), found);
        } else if (each.isStuck(time)) {
            call(Matter.SENSOR_STUCK, each, Phrase.of("watch.stuck", each.kind().words()), found);
        } else if (each.isRestless(time)) {
            call(
                    Matter.SENSOR_RESTLESS,
                    each,
                    Phrase.of("watch.restless", each.kind().words()),
                    found);
        }
    }

    private void write(Instant at, Map<SensorKind, Double> medians) {
        List<Observation> observations = medians.entrySet().stream()
                .map(each -> each.getKey().observation(each.getValue()))
                .toList();
        book.add(new Reading(at, BY, observations));
        medians.forEach((kind, value) -> sensors.get(kind).told(value));
        readAt = at;
        counts = counts.plus(0, 0, 0, 0, 1, 0, 0);
    }

    /** Asks the adviser; what it says is called for if it is worth it, a leap in any case. */
    private void consult(Optional<Phrase> leap, List<Attention> found) {
        Advice advice = counsel.advise(book.journal(), time);
        askedAt = time;
        counts = counts.plus(0, 0, 0, 0, 0, 1, 0);
        Optional<Matter> matter = matter(advice);
        if (matter.filter(Matter.SAFETY::equals).isEmpty()) {
            calls.calm(time);
            matter = leap.isPresent() ? Optional.of(Matter.LEAP) : matter;
        }
        Optional<Matter> called = matter.filter(each -> calls.call(each, Optional.empty(), time));
        called.ifPresent(
                each -> found.add(attention(each, Optional.empty(), leap.orElse(advice.what()), Optional.of(advice))));
    }

    private Optional<Matter> matter(Advice advice) {
        Step step = advice.step();
        if (step instanceof Step.MakeSafe
                || advice.diagnosis().states().getOrDefault(FoamState.FLOODING, 0.0) > FLOOD_CHANCE) {
            return Optional.of(Matter.SAFETY);
        }
        if (step instanceof Step.Look) {
            return Optional.of(Matter.LOOK);
        }
        double now = advice.diagnosis().states().getOrDefault(FoamState.ON_TARGET, 0.0);
        boolean pays = advice.expectation().chanceOnTarget() - now >= options.leastGain();
        return pays && !(step instanceof Step.Hold) ? Optional.of(Matter.STEP) : Optional.empty();
    }

    private void call(Matter matter, Sensor sensor, Phrase text, List<Attention> found) {
        if (calls.call(matter, Optional.of(sensor.kind()), time)) {
            found.add(attention(matter, Optional.of(sensor.kind()), text, Optional.empty()));
        }
    }

    private Attention attention(Matter matter, Optional<SensorKind> sensor, Phrase text, Optional<Advice> advice) {
        return new Attention(time, matter, sensor, text, advice);
    }

    private static Quantity hours(Duration duration) {
        return Quantity.of(duration.toSeconds() / 3600.0, Unit.HOUR);
    }
}
