package io.github.weirwise.diagnosis;

import io.github.weirwise.internal.kept.KeptBytes;
import io.github.weirwise.reading.AdviceGiven;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Work;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.Sheet;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyLaw;
import io.github.weirwise.unit.Sum;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/**
 * All that is believed of a unit, followed entry by entry: its branches, its settings, and what was last seen and done. Changed in
 * place; {@link #copy} makes one that goes its own way.
 */
final class Bank {
    private static final double DAY_MILLIS = 86_400_000;
    /** Longest time taken as one step; a clock set wrong by years must not end in numbers without meaning. */
    private static final double MOST_DAYS = 400;
    /** Water that is filled in by hand may bring the wrong salt. */
    private static final double SALT_ERROR_SD = 0.15;

    private static final int CHANGES_KEPT = 6;

    private final SkimmerUnit unit;
    private final SteadyLaw law;
    private Settings settings;
    private SumModel model;
    private final Branches branches;
    private Instant time;
    private JournalEntry last;
    private final List<Interval.Change> changes;
    private final History history;
    private final Readings readings;

    Bank(SkimmerUnit unit, Settings start) {
        this(
                unit,
                new SteadyLaw(unit),
                new Kept(
                        start,
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        History.nothing(),
                        Readings.Kept.NOTHING,
                        List.of()),
                null);
    }

    /** The bank that was kept. */
    Bank(SkimmerUnit unit, Kept kept) {
        this(unit, new SteadyLaw(unit), kept, Branches.of(kept.tracks));
    }

    /** @param branches null for those before the first reading */
    private Bank(SkimmerUnit unit, SteadyLaw law, Kept kept, Branches branches) {
        this.unit = unit;
        this.law = law;
        this.settings = kept.settings;
        this.model = new SumModel(Sheet.of(unit, settings, law));
        this.branches = branches == null ? Branches.before(model.sheet()) : branches;
        this.time = kept.time.orElse(null);
        this.last = kept.last.orElse(null);
        this.changes = new ArrayList<>(kept.changes);
        this.history = kept.history.copy();
        this.readings = new Readings(this, kept.readings);
    }

    Bank copy() {
        return new Bank(unit, law, kept(List.of()), branches.copy());
    }

    /**
     * All of a bank that its unit does not give.
     *
     * @param time of the last entry
     */
    record Kept(
            Settings settings,
            Optional<Instant> time,
            Optional<JournalEntry> last,
            List<Interval.Change> changes,
            History history,
            Readings.Kept readings,
            List<Track.Kept> tracks) {
        static final int LAYOUT = KeptBytes.layout(Kept.class);
    }

    Kept kept() {
        return kept(branches.kept());
    }

    private Kept kept(List<Track.Kept> tracks) {
        return new Kept(
                settings,
                Optional.ofNullable(time),
                Optional.ofNullable(last),
                changes,
                history,
                readings.kept(),
                tracks);
    }

    SkimmerUnit unit() {
        return unit;
    }

    Settings settings() {
        return settings;
    }

    SumModel model() {
        return model;
    }

    Branches branches() {
        return branches;
    }

    /** The amount, read with a scatter of its own. */
    Mixture amount(double sd) {
        return branches.sum(model, Sum.AMOUNT, sd);
    }

    Readings readings() {
        return readings;
    }

    History history() {
        return history;
    }

    Optional<Instant> lastChange() {
        return changes.isEmpty()
                ? Optional.empty()
                : Optional.of(changes.get(changes.size() - 1).at());
    }

    List<Interval.Change> changes() {
        return changes;
    }

    boolean airOff() {
        return settings.airLitresPerHour() <= 0;
    }

    /** Lets time pass up to a moment. */
    void forward(Instant to) {
        if (time != null && to.isAfter(time)) {
            double days = Math.min(MOST_DAYS, days(time, to));
            branches.all(track -> track.forward(days));
        }
        if (time == null || to.isAfter(time)) {
            time = to;
        }
    }

    static double days(Instant from, Instant to) {
        return Duration.between(from, to).toSeconds() * 1000.0 / DAY_MILLIS;
    }

    /** Takes in what came, in order of time; at one moment what was read came before what was done. An entry sent twice counts once. */
    void take(List<JournalEntry> entries, Instant now) {
        List<JournalEntry> sorted = new ArrayList<>(
                entries.stream().filter(entry -> !entry.at().isAfter(now)).toList());
        sorted.sort(Comparator.comparing(JournalEntry::at).thenComparing(entry -> entry instanceof Reading ? 0 : 1));
        int toCome = 0;
        JournalEntry before = last;
        for (Iterator<JournalEntry> each = sorted.iterator(); each.hasNext(); ) {
            JournalEntry entry = each.next();
            if (entry.equals(before)) {
                each.remove();
            }
            toCome += observations(entry);
            before = entry;
        }
        for (JournalEntry entry : sorted) {
            toCome -= observations(entry);
            take(entry, toCome < Traces.KEPT);
        }
    }

    private static int observations(JournalEntry entry) {
        return entry instanceof Reading reading ? reading.observations().size() : 0;
    }

    /**
     * Takes in one entry.
     *
     * @param traced whether its traces will be among those that are kept
     */
    void take(JournalEntry entry, boolean traced) {
        Work.step();
        readings.before(entry, last);
        last = entry;
        forward(entry.at());
        if (entry instanceof Reading reading) {
            readings.read(reading, traced);
        } else if (entry instanceof WeirMove move) {
            moved(move);
        } else if (entry instanceof SettingChange change) {
            set(change);
        } else if (entry instanceof Service service) {
            serviced(service);
        } else if (entry instanceof Happening happening) {
            happened(happening);
        } else if (entry instanceof Note || entry instanceof AdviceGiven) {
            // Words change no number.
            return;
        }
    }

    private void moved(WeirMove move) {
        double by = move.toCrestMm() - settings.weirCrestMm();
        if (by != 0) {
            changed(entryChange(move.at(), by, 0));
            apply(settings.withWeirCrestMm(move.toCrestMm()));
        }
    }

    private void set(SettingChange change) {
        if (change.what() == SettingChange.Knob.AIR) {
            apply(settings.withAirLitresPerHour(Math.min(20000, change.litresPerHour())));
        } else {
            apply(settings.withFlowLitresPerHour(change.litresPerHour()));
        }
        changed(entryChange(change.at(), 0, 2));
    }

    private void serviced(Service service) {
        Part part = service.part();
        branches.all(track -> Prior.serviced(track.moments(), part));
        history.serviced(part, service.at());
        readings.traces().serviced(part);
        if (State.of(part) >= 0) {
            changed(entryChange(service.at(), 0, part.work().foamAwayHours()));
        }
    }

    private static Interval.Change entryChange(Instant at, double byMm, double foamAwayHours) {
        return new Interval.Change(at, byMm, foamAwayHours);
    }

    private void changed(Interval.Change change) {
        changes.add(change);
        readings.changed();
        if (changes.size() > CHANGES_KEPT) {
            changes.remove(0);
        }
    }

    private void happened(Happening happening) {
        history.happened(happening);
        Passing passing = Passing.of(happening.kind());
        branches.all(track -> {
            track.stirred(passing.meanLog(), passing.sd());
            if (happening.kind() == Happening.Kind.TOP_OFF || happening.kind() == Happening.Kind.WATER_CHANGE) {
                track.moments().noise(State.of(Part.SALT_MIX), SALT_ERROR_SD * SALT_ERROR_SD);
            }
            if (happening.kind() == Happening.Kind.FIRST_START) {
                Prior.started(track.moments());
            }
        });
    }

    void apply(Settings next) {
        settings = next;
        model = new SumModel(Sheet.of(unit, next, law));
    }

    boolean nothingRead() {
        return last == null || history.readings().isEmpty();
    }
}
