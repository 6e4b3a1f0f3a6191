package io.github.weirwise.diagnosis;

import io.github.weirwise.internal.kept.KeptBytes;
import io.github.weirwise.reading.AdviceGiven;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Range;
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
    /** A cup with less of the wanted amount than this is empty: how little cannot be read. */
    private static final double EMPTY_SHARE = 0.03;
    /** Amounts read within this of the last one tell of the same foam. */
    private static final double FORECAST_DAYS = 0.4;
    /** Longest time taken as one step; a clock set wrong by years must not end in numbers without meaning. */
    private static final double MOST_DAYS = 400;
    /** A flood is at least this much over the wanted amount. */
    private static final double FLOOD_LOG = Math.log(4);

    /** A weir that falls free says only that the pad is not yet bad enough to back water up. */
    private static final double FREE_PAD = 0.3;

    /** Water that is filled in by hand may bring the wrong salt. */
    private static final double SALT_ERROR_SD = 0.15;

    private static final Duration SAME_VISIT = Duration.ofHours(1);
    /** An amount less doubtful than this by what was changed within its time. */
    private static final double SETTLED_SD = 0.3;
    /** So long after food the foam may lie low, whatever the day brings (common practice). */
    private static final Duration FED = Duration.ofHours(3);

    private static final double FED_SCATTER = 4;

    private static final int CHANGES_KEPT = 6;

    private final SkimmerUnit unit;
    private final SteadyLaw law;
    private Settings settings;
    private SumModel model;
    private final Branches branches;
    private Instant time;
    private Instant amountReadAt;
    private JournalEntry last;
    private Unsure unsure = Unsure.NOTHING;
    private final List<String> readers = new ArrayList<>();
    private final List<Interval.Change> changes = new ArrayList<>();
    private final History history;
    private final Forecasts forecasts;
    private final Traces traces;

    Bank(SkimmerUnit unit, Settings start) {
        this.unit = unit;
        this.law = new SteadyLaw(unit);
        this.settings = start;
        this.model = new SumModel(Sheet.of(unit, start, law));
        this.branches = Branches.before(model.sheet());
        this.history = new History();
        this.forecasts = new Forecasts();
        this.traces = new Traces();
    }

    private Bank(Bank other) {
        unit = other.unit;
        law = other.law;
        settings = other.settings;
        model = other.model;
        branches = other.branches.copy();
        time = other.time;
        amountReadAt = other.amountReadAt;
        last = other.last;
        unsure = other.unsure;
        readers.addAll(other.readers);
        changes.addAll(other.changes);
        history = other.history.copy();
        forecasts = other.forecasts.copy();
        traces = other.traces.copy();
    }

    Bank copy() {
        return new Bank(this);
    }

    /**
     * All of a bank that unit and start do not give.
     *
     * @param time of the last entry
     */
    record Kept(
            Settings settings,
            Optional<Instant> time,
            Optional<Instant> amountReadAt,
            Optional<JournalEntry> last,
            Unsure unsure,
            List<String> readers,
            List<Interval.Change> changes,
            History.Kept history,
            Forecasts.Kept forecasts,
            List<Traces.Trace> traces,
            List<Track.Kept> tracks) {
        static final int LAYOUT = KeptBytes.layout(Kept.class);
    }

    Kept kept() {
        return new Kept(
                settings,
                Optional.ofNullable(time),
                Optional.ofNullable(amountReadAt),
                Optional.ofNullable(last),
                unsure,
                readers,
                changes,
                history.kept(),
                forecasts.kept(),
                traces.kept(),
                branches.kept());
    }

    /** The bank that was kept. */
    Bank(SkimmerUnit unit, Kept kept) {
        this.unit = unit;
        this.law = new SteadyLaw(unit);
        this.settings = kept.settings;
        this.model = new SumModel(Sheet.of(unit, settings, law));
        this.branches = Branches.of(kept.tracks);
        this.time = kept.time.orElse(null);
        this.amountReadAt = kept.amountReadAt.orElse(null);
        this.last = kept.last.orElse(null);
        this.unsure = kept.unsure;
        this.readers.addAll(kept.readers);
        this.changes.addAll(kept.changes);
        this.history = new History(kept.history);
        this.forecasts = new Forecasts(kept.forecasts);
        this.traces = new Traces(kept.traces);
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

    History history() {
        return history;
    }

    Forecasts forecasts() {
        return forecasts;
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
            double days = Math.min(MOST_DAYS, millis(time, to) / DAY_MILLIS);
            branches.all(track -> track.forward(days));
        }
        if (time == null || to.isAfter(time)) {
            time = to;
        }
    }

    private static double millis(Instant from, Instant to) {
        return Duration.between(from, to).toSeconds() * 1000.0;
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
        unsure = unsure.before(entry, unit);
        flooded();
        if (entry instanceof Happening happening && happening.kind() == Happening.Kind.FLOOD && !airOff()) {
            boolean slowly = last instanceof Reading reading && Unsure.filledSlowly(reading, entry.at(), unit);
            unsure = unsure.withFlood(slowly ? Optional.empty() : Optional.of(entry.at()));
        }
        last = entry;
        forward(entry.at());
        if (entry instanceof Reading reading) {
            read(reading, traced);
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
        traces.serviced(part);
        if (State.of(part) >= 0) {
            changed(entryChange(service.at(), 0, part.work().foamAwayHours()));
        }
    }

    private static Interval.Change entryChange(Instant at, double byMm, double foamAwayHours) {
        return new Interval.Change(at, byMm, foamAwayHours);
    }

    private void changed(Interval.Change change) {
        changes.add(change);
        unsure = unsure.withLevel(Optional.empty());
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

    /** Takes in the flood that was noted last, unless a cup read beside it told otherwise. */
    void flooded() {
        if (unsure.flood().isPresent()) {
            branches.all(track -> {
                track.amountBeyond(model, Interval.NOW, FLOOD_LOG, true, 0.6);
                track.settle();
            });
            unsure = unsure.withFlood(Optional.empty());
        }
    }

    /** What waits to be read again. */
    Unsure unsure() {
        return unsure;
    }

    /** How much a word for the foam scatters at a time. */
    private double lookScatter(Instrument row, Instant at) {
        boolean fed = row == Instrument.FOAM_LOOK
                && history.happening(Happening.Kind.FED)
                        .filter(when -> Duration.between(when, at).compareTo(FED) < 0)
                        .isPresent();
        return fed ? FED_SCATTER * row.scatter() : row.scatter();
    }

    /** Whether a level has to be read again first; one read a second time, or near what is expected, ends the doubt. */
    private boolean doubted(Observation.FunnelLevel level, int habit) {
        double[] mean = branches.mean();
        double off = level.mm() - model.value(Sum.LEVEL, mean) - (habit < 0 ? 0 : mean[habit]);
        unsure = unsure.afterLevel(level.mm(), Math.abs(off), () -> {
            double sd = branches.sum(model, Sum.LEVEL, Instrument.FUNNEL_LEVEL.scatter())
                    .sd();
            return habit < 0 ? sd : Math.hypot(sd, branches.component(habit).sd());
        });
        return unsure.levelMm().isPresent();
    }

    private void apply(Settings next) {
        settings = next;
        model = new SumModel(Sheet.of(unit, next, law));
    }

    private void read(Reading reading, boolean traced) {
        history.visited(reading.at());
        double[] before = traced ? branches.mean() : null;
        for (Observation seen : reading.observations()) {
            if (traced) {
                Optional<Double> expected = Expected.of(Instrument.of(seen), model, before);
                observe(reading, seen);
                double[] after = branches.mean();
                traces.add(seen, expected, before, after);
                before = after;
            } else {
                observe(reading, seen);
            }
        }
        branches.settle();
    }

    private void observe(Reading reading, Observation seen) {
        Instrument row = Instrument.of(seen);
        history.seen(row, seen, reading.at());
        if (seen instanceof Observation.CupVolume cup) {
            cup(reading, cup, row);
        } else if (seen instanceof Observation.WaterTemperature temperature) {
            apply(settings.withWaterCelsius(temperature.celsius()));
        } else if (row.showsPart()) {
            if (!foundBeforeItsService(reading, seen)) {
                part(row, seen);
            }
        } else if (row.sum().isPresent() && !(airOff() && row.sum().get() == Sum.AMOUNT)) {
            Sum sum = row.sum().get();
            int habit = habit(row, reading.by());
            if (seen instanceof Observation.FunnelLevel level && doubted(level, habit)) {
                return;
            }
            if (row.isWord()) {
                Range range = row.range(seen, model.sheet());
                branches.all(
                        track -> track.word(model, sum, row.factor(), range, lookScatter(row, reading.at()), habit));
            } else {
                double value = row.value(seen, model.sheet());
                branches.all(track -> track.sum(model, sum, row.factor(), value, row.scatter(), habit));
            }
        }
    }

    Traces traces() {
        return traces;
    }

    boolean nothingRead() {
        return last == null || history.nothingSeen();
    }

    private int habit(Instrument row, String reader) {
        return switch (row.eye()) {
            case NONE -> -1;
            case TONE -> State.TONE;
            case LEVEL -> {
                if (!readers.contains(reader) && readers.size() < State.EYES) {
                    readers.add(reader);
                }
                int slot = readers.indexOf(reader);
                yield slot < 0 ? -1 : State.EYE + slot;
            }
        };
    }

    private void part(Instrument row, Observation seen) {
        double size = row.value(seen, model.sheet());
        Part part = seen instanceof Observation.Inspection look
                ? look.part()
                : row.measures().iterator().next();
        if (part == Part.WATER_SURFACE || part == Part.ADDITIVES) {
            place(part, ((Observation.Inspection) seen).finding());
        } else if (State.of(part) >= 0) {
            double sd = row.scatter() * (0.85 + 0.7 * Math.max(0, Math.min(1, size)));
            if (row == Instrument.LEVEL_BEYOND_WEIR && size < FREE_PAD) {
                branches.all(track -> track.partAtMost(part, FREE_PAD, sd));
            } else {
                branches.all(track -> track.part(part, Math.max(0, size), sd));
            }
        }
    }

    /** A finding that is noted just after the part's service, in the order of typing, is what the service put right. */
    private boolean foundBeforeItsService(Reading reading, Observation seen) {
        return seen instanceof Observation.Inspection look
                && look.finding() != Finding.GOOD
                && history.service(look.part())
                        .filter(done -> Duration.between(done, reading.at()).compareTo(SAME_VISIT) < 0)
                        .isPresent();
    }

    /** A place shows what passes: oil on the water breaks foam, additives make it. */
    private void place(Part part, Finding finding) {
        double sign = part == Part.WATER_SURFACE ? -1 : 1;
        branches.all(track -> track.passing(sign * 2 * finding.size(), 0.5));
    }

    private void cup(Reading reading, Observation.CupVolume cup, Instrument row) {
        if (airOff()) {
            return;
        }
        Interval interval = Interval.of(changes, reading.at(), cup.hours());
        double value = row.value(cup, model.sheet());
        boolean empty = cup.mlPerDay() < EMPTY_SHARE * model.sheet().wantedMlPerDay();
        boolean doubted = changes.isEmpty() || interval.doubtSd() < SETTLED_SD
                ? unsure.doubts(cup, empty, reading, unit)
                : !cup.full() && !cup.possibleIn(unit);
        unsure = unsure.withCup(doubted);
        if (doubted) {
            return;
        }
        if (!cup.full() && !empty) {
            forecast(reading.at(), interval, value, row.scatter());
        }
        if (cup.full()) {
            branches.all(track -> track.amountBeyond(model, interval, value, true, row.scatter()));
        } else if (empty) {
            branches.all(track -> track.amountBeyond(model, interval, Math.log(EMPTY_SHARE), false, 0.4));
        } else {
            branches.all(track -> track.amount(model, interval, value, row.scatter()));
        }
        amountReadAt = reading.at();
    }

    /** What was expected of an amount, before it is taken in. */
    private void forecast(Instant at, Interval interval, double value, double sd) {
        boolean settled = interval.doubtSd() < SETTLED_SD;
        if (amountReadAt != null && settled && millis(amountReadAt, at) > FORECAST_DAYS * DAY_MILLIS) {
            forecasts.came(amount(sd), value);
        }
    }
}
