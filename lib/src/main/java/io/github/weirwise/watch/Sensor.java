package io.github.weirwise.watch;

import io.github.weirwise.report.OutOfRangeException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One sensor with a clock of its own. A value a little late still counts; a step of its clock is believed only when three values
 * in a row tell the same new time, so that one wrong stamp can neither stop the sensor nor carry it away.
 */
final class Sensor {
    private static final int CONFIRMED_BY = 3;
    private static final int MOST_VALUES = 64;
    /** A value over so many scatters away is another state, not noise. */
    private static final double FAR = 4;
    /** A window in which more than this share lies far from its middle is restless and tells nothing. */
    private static final double RESTLESS_SHARE = 0.3;

    private static final int FEWEST_JUMPS = 3;
    /** So many leaps within a day are not events but a restless sensor. */
    private static final int MOST_LEAPS = 4;

    private static final Duration LEAPS_WITHIN = Duration.ofHours(24);
    /** Foam, air and flow are never the same to the last digit for a day. */
    private static final Duration STUCK_AFTER = Duration.ofHours(24);

    private static final int STUCK_COUNT = 50;

    private final SensorKind kind;
    private final WatchOptions options;
    private Instant newest;
    private Duration ahead = Duration.ZERO;
    private final List<SensorValue> doubtful = new ArrayList<>();
    private final List<Double> window = new ArrayList<>();
    private Double told;
    private boolean moved;
    private Instant heardAt;
    private Instant soundAt;
    private Double same;
    private Instant sameSince;
    private int sameCount;
    private final List<Instant> leaps = new ArrayList<>();
    private boolean othersSpoke;
    private boolean clockStepped;
    private long passedOver;

    Sensor(SensorKind kind, WatchOptions options) {
        this.kind = kind;
        this.options = options;
    }

    Sensor(SensorState state, WatchOptions options) {
        this(state.kind(), options);
        newest = state.newest();
        ahead = Duration.ofMillis(Math.round(state.aheadSeconds() * 1000));
        doubtful.addAll(state.doubtful());
        window.addAll(state.window());
        told = state.told().orElse(null);
        moved = state.moved();
        heardAt = state.heardAt();
        soundAt = state.soundAt();
        same = state.same().orElse(null);
        sameSince = state.sameSince();
        sameCount = state.sameCount();
        leaps.addAll(state.leaps());
        othersSpoke = state.othersSpoke();
    }

    SensorState state() {
        return new SensorState(
                kind,
                newest,
                ahead.toMillis() / 1000.0,
                doubtful,
                window,
                Optional.ofNullable(told),
                moved,
                heardAt,
                soundAt,
                Optional.ofNullable(same),
                sameSince,
                sameCount,
                leaps,
                othersSpoke);
    }

    SensorKind kind() {
        return kind;
    }

    /**
     * Puts a value in order.
     *
     * @param time the watch's time; null before the first value of all
     * @return values that may be taken now; none while a new time is in doubt
     */
    List<SensorValue> pass(SensorValue value, Instant time) {
        heardAt = time == null ? value.at() : time;
        if (newest == null) {
            soundAt = heardAt;
            sameSince = heardAt;
            boolean agrees =
                    time == null || Duration.between(time, value.at()).abs().compareTo(options.longestGap()) <= 0;
            ahead = agrees ? Duration.ZERO : Duration.between(value.at(), time);
            clockStepped = !agrees;
            newest = value.at();
            return List.of(value);
        }
        if (follows(value.at(), newest)) {
            passedOver += doubtful.size();
            doubtful.clear();
            newest = value.at().isAfter(newest) ? value.at() : newest;
            return List.of(value);
        }
        return doubt(value, time);
    }

    private List<SensorValue> doubt(SensorValue value, Instant time) {
        if (!doubtful.isEmpty()
                && !follows(value.at(), doubtful.get(doubtful.size() - 1).at())) {
            passedOver += doubtful.size();
            doubtful.clear();
        }
        othersSpoke &= !doubtful.isEmpty();
        doubtful.add(value);
        if (doubtful.size() < CONFIRMED_BY) {
            return List.of();
        }
        List<SensorValue> confirmed = List.copyOf(doubtful);
        doubtful.clear();
        window.clear();
        Instant shown = confirmed.get(0).at().plus(ahead);
        boolean realGap = shown.isAfter(time)
                ? !othersSpoke || !shown.isAfter(time.plus(options.longestGap()))
                : !shown.isBefore(time.minus(options.longestGap()));
        if (!realGap) {
            ahead = Duration.between(confirmed.get(0).at(), time);
            clockStepped = true;
        }
        newest = value.at();
        return confirmed;
    }

    private boolean follows(Instant at, Instant earlier) {
        return !at.isBefore(earlier.minus(options.window())) && !at.isAfter(earlier.plus(options.longestGap()));
    }

    /** Another sensor said something in order: while this one is in doubt that tells a wrong clock from a time without values. */
    void otherSpoke() {
        othersSpoke = true;
    }

    /** The watch's time of a value. */
    Instant timeOf(SensorValue value) {
        return value.at().plus(ahead);
    }

    /** Whether its clock stepped since this was last asked. */
    boolean clockStepped() {
        boolean stepped = clockStepped;
        clockStepped = false;
        return stepped;
    }

    long passedOver() {
        long count = passedOver;
        passedOver = 0;
        return count;
    }

    /** Takes a value in; false when no sound sensor shows it. */
    boolean add(double value, Instant at) {
        heardAt = at;
        if (!isSound(value)) {
            return false;
        }
        soundAt = at;
        if (same == null || same != value) {
            same = value;
            sameSince = at;
            sameCount = 0;
        }
        sameCount++;
        if (window.size() == MOST_VALUES) {
            window.remove(0);
        }
        window.add(value);
        return true;
    }

    private boolean isSound(double value) {
        try {
            kind.observation(value);
            return true;
        } catch (OutOfRangeException nonsense) {
            return false;
        }
    }

    /** The median of the last three values when all of them are far from what was told and agree: something happened. */
    Optional<Double> leap() {
        if (told == null || window.size() < CONFIRMED_BY) {
            return Optional.empty();
        }
        List<Double> last = window.subList(window.size() - CONFIRMED_BY, window.size());
        double middle = median(last);
        boolean far = last.stream().allMatch(each -> scatters(told, each) > FAR);
        boolean agree = last.stream().allMatch(each -> scatters(middle, each) <= 2);
        return far && agree ? Optional.of(middle) : Optional.empty();
    }

    /** What was told is now this; the values before the leap count no more. */
    void leapt(double value, Instant at) {
        leaps.add(at);
        window.subList(0, window.size() - CONFIRMED_BY).clear();
        told(value);
    }

    /** The middle of the window; empty when it has too few values, is restless, or the sensor is stuck. */
    Optional<Double> reading(Instant now) {
        return window.size() < options.fewestValues() || isRestless(now) || isStuck(now)
                ? Optional.empty()
                : Optional.of(median(window));
    }

    /** Whether values jump to and fro between states, within the window or from leap to leap. */
    boolean isRestless(Instant now) {
        leaps.removeIf(each -> !now.isBefore(each.plus(LEAPS_WITHIN)));
        if (leaps.size() >= MOST_LEAPS) {
            return true;
        }
        if (window.size() < options.fewestValues()) {
            return false;
        }
        double middle = median(window);
        long far = window.stream().filter(each -> scatters(middle, each) > FAR).count();
        int jumps = 0;
        for (int i = 1; i < window.size(); i++) {
            jumps += scatters(window.get(i - 1), window.get(i)) > FAR ? 1 : 0;
        }
        return far > RESTLESS_SHARE * window.size() && jumps >= FEWEST_JUMPS;
    }

    boolean isStuck(Instant now) {
        return kind.flickers()
                && sameCount >= STUCK_COUNT
                && Duration.between(sameSince, now).compareTo(STUCK_AFTER) >= 0;
    }

    /** Whether values come, but none of them sound for long. */
    boolean isBlind(Instant now) {
        return !isSilent(now) && Duration.between(soundAt, heardAt).compareTo(options.longestGap()) >= 0;
    }

    boolean isSilent(Instant now) {
        return heardAt != null && !now.isBefore(heardAt.plus(options.silentAfter()));
    }

    void heard(Instant at) {
        heardAt = at;
        soundAt = at;
    }

    Duration silentFor(Instant now) {
        return Duration.between(heardAt, now);
    }

    /** Whether a median has moved enough to be told: by far at once, which is a leap too, by more than a scatter twice in a row. */
    boolean hasMoved(double median, Instant now) {
        double by = told == null ? 0 : scatters(told, median);
        if (by > FAR) {
            leaps.add(now);
        }
        boolean tell = by > FAR || by > 1 && moved || told == null;
        moved = by > 1;
        return tell;
    }

    void told(double value) {
        told = value;
        moved = false;
    }

    Optional<Double> told() {
        return Optional.ofNullable(told);
    }

    /** A sensor that speaks seldom keeps its values until they are enough. */
    void closeWindow() {
        if (window.size() >= options.fewestValues()) {
            window.clear();
        }
    }

    private double scatters(double from, double value) {
        return Math.abs(value - from) / kind.worthTelling(from);
    }

    private static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int n = sorted.size();
        return n % 2 == 1 ? sorted.get(n / 2) : (sorted.get(n / 2 - 1) + sorted.get(n / 2)) / 2;
    }
}
