package io.github.weirwise.watch;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Puts a stream in order of time. A value a little late still counts; a step of the clock, forward or back, is believed only
 * when three values in a row tell the same new time, so that one wrong stamp can neither stop the stream nor carry it away.
 */
final class StreamTime {
    private static final int CONFIRMED_BY = 3;

    private final Duration lateness;
    private final Duration longestGap;
    private final List<SensorValue> doubtful = new ArrayList<>();
    private Instant newest;
    private long passedOver;

    /** A step of the clock that was believed. */
    record Jump(Instant from, Instant to) {
        boolean isBack() {
            return to.isBefore(from);
        }
    }

    /**
     * What one value set free.
     *
     * @param values values to take now, in the order they came; none while a new time is in doubt
     * @param jump the step that the clock made before them, if it made one
     */
    record Passage(List<SensorValue> values, Optional<Jump> jump) {}

    /**
     * @param lateness how far a value may lie behind the newest
     * @param longestGap how far it may lie before it
     */
    StreamTime(Duration lateness, Duration longestGap) {
        this.lateness = lateness;
        this.longestGap = longestGap;
    }

    Passage pass(SensorValue value) {
        if (newest == null || follows(value.at(), newest)) {
            passedOver += doubtful.size();
            doubtful.clear();
            newest = newest == null || value.at().isAfter(newest) ? value.at() : newest;
            return new Passage(List.of(value), Optional.empty());
        }
        return doubt(value);
    }

    private Passage doubt(SensorValue value) {
        boolean agrees = doubtful.isEmpty()
                || follows(value.at(), doubtful.get(doubtful.size() - 1).at());
        if (!agrees) {
            passedOver += doubtful.size();
            doubtful.clear();
        }
        doubtful.add(value);
        if (doubtful.size() < CONFIRMED_BY) {
            return new Passage(List.of(), Optional.empty());
        }
        List<SensorValue> confirmed = List.copyOf(doubtful);
        Jump jump = new Jump(newest, confirmed.get(0).at());
        doubtful.clear();
        newest = value.at();
        return new Passage(confirmed, Optional.of(jump));
    }

    private boolean follows(Instant at, Instant earlier) {
        return !at.isBefore(earlier.minus(lateness)) && !at.isAfter(earlier.plus(longestGap));
    }

    /** Values dropped because their time fitted nothing. */
    long passedOver() {
        return passedOver;
    }

    /** The newest time that was believed; null before the first value. */
    Instant newest() {
        return newest;
    }
}
