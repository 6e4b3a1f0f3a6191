package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Range;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Sum;
import io.github.weirwise.unit.Target;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What was read of a unit, taken into the branches of its bank observation by observation. Changed in place. */
final class Readings {
    /** A cup with less of the wanted amount than this is empty: how little cannot be read. */
    private static final double EMPTY_SHARE = 0.03;
    /** Amounts read within this of the last one tell of the same foam. */
    private static final double FORECAST_DAYS = 0.4;
    /** A flood is at least this much over the wanted amount. */
    private static final double FLOOD_LOG = Math.log(4);

    /** A weir that falls free says only that the pad is not yet bad enough to back water up. */
    private static final double FREE_PAD = 0.3;

    private static final Duration SAME_VISIT = Duration.ofHours(1);
    /** An amount less doubtful than this by what was changed within its time. */
    private static final double SETTLED_SD = 0.3;
    /** So long after food the foam may lie low, whatever the day brings (common practice). */
    private static final Duration FED = Duration.ofHours(3);

    private static final double FED_SCATTER = 4;
    private static final double WELL_LOW = Math.log(Target.AMOUNT_BAND.low());
    private static final double WELL_HIGH = Math.log(Target.AMOUNT_BAND.high());
    private static final double WELL = 0.7;
    /** Sums that a meter or a ruler shows, and that no foam tells of. */
    private static final Set<Sum> METERED = Set.of(Sum.AIR, Sum.FLOW, Sum.HEAD, Sum.CLEAR_LEVEL);

    private final Bank bank;
    private final Branches branches;
    private final List<String> readers;
    private Instant amountReadAt;
    private Unsure unsure;
    private Forecasts forecasts;
    private final Traces traces;

    /**
     * All of it but the branches.
     *
     * @param readers whose eyes are known, in the order of {@link State#EYE}
     * @param amountReadAt when a cup was last read
     * @param unsure what waits to be read again
     */
    record Kept(
            List<String> readers, Optional<Instant> amountReadAt, Unsure unsure, Forecasts forecasts, Traces traces) {
        static final Kept NOTHING =
                new Kept(List.of(), Optional.empty(), Unsure.NOTHING, Forecasts.NONE, new Traces(List.of()));
    }

    Readings(Bank bank, Kept kept) {
        this.bank = bank;
        this.branches = bank.branches();
        this.readers = new ArrayList<>(kept.readers);
        this.amountReadAt = kept.amountReadAt.orElse(null);
        this.unsure = kept.unsure;
        this.forecasts = kept.forecasts;
        this.traces = kept.traces.copy();
    }

    Kept kept() {
        return new Kept(readers, Optional.ofNullable(amountReadAt), unsure, forecasts, traces);
    }

    /** What waits to be read again. */
    Unsure unsure() {
        return unsure;
    }

    Forecasts forecasts() {
        return forecasts;
    }

    Traces traces() {
        return traces;
    }

    /** Before an entry is taken in: a flood noted so far counts, unless this entry explains it; one that it tells of waits. */
    void before(JournalEntry entry, JournalEntry last) {
        unsure = unsure.before(entry, bank.unit());
        flooded();
        if (entry instanceof Happening happening && happening.kind() == Happening.Kind.FLOOD && !bank.airOff()) {
            boolean slowly = last instanceof Reading reading && Unsure.filledSlowly(reading, entry.at(), bank.unit());
            unsure = unsure.withFlood(slowly ? Optional.empty() : Optional.of(entry.at()));
        }
    }

    /** After a change no level and no meter waits for a second reading any more. */
    void changed() {
        unsure = unsure.withLevel(Optional.empty()).withoutMeter();
    }

    /** Takes in the flood that was noted last, unless a cup read beside it told otherwise. */
    void flooded() {
        if (unsure.flood().isPresent()) {
            branches.all(track -> {
                track.amountBeyond(bank.model(), Interval.NOW, FLOOD_LOG, true, 0.6);
                track.settle();
            });
            unsure = unsure.withFlood(Optional.empty());
        }
    }

    void read(Reading reading, boolean traced) {
        bank.history().visited(reading.at());
        double[] before = traced ? branches.mean() : null;
        for (Observation seen : reading.observations()) {
            if (traced) {
                Optional<Double> expected = Expected.of(Instrument.of(seen), bank.model(), before);
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
        bank.history().seen(row, seen, reading.at());
        if (seen instanceof Observation.CupVolume cup) {
            cup(reading, cup, row);
        } else if (seen instanceof Observation.WaterTemperature temperature) {
            bank.apply(bank.settings().withWaterCelsius(temperature.celsius()));
        } else if (row.showsPart()) {
            if (!foundBeforeItsService(reading, seen)) {
                part(row, seen);
            }
        } else if (row.sum().isPresent() && !(bank.airOff() && row.sum().get() == Sum.AMOUNT)) {
            Sum sum = row.sum().get();
            int habit = habit(row, reading.by());
            if (seen instanceof Observation.FunnelLevel level && doubted(level, habit)) {
                return;
            }
            if (row.isWord()) {
                Range range = row.range(seen, bank.model().sheet());
                branches.all(track ->
                        track.word(bank.model(), sum, row.factor(), range, lookScatter(row, reading.at()), habit));
            } else {
                double value = row.value(seen, bank.model().sheet());
                if (METERED.contains(sum) && doubted(row, sum, value)) {
                    return;
                }
                branches.all(track -> track.sum(bank.model(), sum, row.factor(), value, row.scatter(), habit));
            }
        }
    }

    /** How much a word for the foam scatters at a time. */
    private double lookScatter(Instrument row, Instant at) {
        boolean fed = row == Instrument.FOAM_LOOK
                && Optional.ofNullable(bank.history().happenings().get(Happening.Kind.FED))
                        .filter(when -> Duration.between(when, at).compareTo(FED) < 0)
                        .isPresent();
        return fed ? FED_SCATTER * row.scatter() : row.scatter();
    }

    /** Whether a level has to be read again first; one read a second time, or near what is expected, ends the doubt. */
    private boolean doubted(Observation.FunnelLevel level, int habit) {
        double[] mean = branches.mean();
        double off = level.mm() - bank.model().value(Sum.LEVEL, mean) - (habit < 0 ? 0 : mean[habit]);
        unsure = unsure.afterLevel(level.mm(), Math.abs(off), () -> {
            double sd = branches.sum(bank.model(), Sum.LEVEL, Instrument.FUNNEL_LEVEL.scatter())
                    .sd();
            return habit < 0 ? sd : Math.hypot(sd, branches.component(habit).sd());
        });
        return unsure.levelMm().isPresent();
    }

    /** Whether a meter has to be read again first: over foam that is as it should be, a slip of unit or digit is likelier than a fault. */
    private boolean doubted(Instrument row, Sum sum, double value) {
        boolean runsWell = bank.amount(0).between(WELL_LOW, WELL_HIGH) > WELL;
        if (!runsWell && !unsure.doubts(row)) {
            return false;
        }
        Mixture expected = branches.sum(bank.model(), sum, 0);
        double off = Math.abs(value - row.factor() * expected.mean());
        double sd = Math.hypot(row.factor() * expected.sd(), row.scatter());
        unsure = unsure.afterMeter(row, value, off / sd);
        return unsure.doubts(row);
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
        double size = row.value(seen, bank.model().sheet());
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
                && Optional.ofNullable(bank.history().services().get(look.part()))
                        .filter(done -> Duration.between(done, reading.at()).compareTo(SAME_VISIT) < 0)
                        .isPresent();
    }

    /** A place shows what passes: oil on the water breaks foam, additives make it. */
    private void place(Part part, Finding finding) {
        double sign = part == Part.WATER_SURFACE ? -1 : 1;
        branches.all(track -> track.passing(sign * 2 * finding.size(), 0.5));
    }

    private void cup(Reading reading, Observation.CupVolume cup, Instrument row) {
        if (bank.airOff()) {
            return;
        }
        Interval interval = Interval.of(bank.changes(), reading.at(), cup.hours());
        double value = row.value(cup, bank.model().sheet());
        boolean empty = cup.mlPerDay() < EMPTY_SHARE * bank.model().sheet().wantedMlPerDay();
        boolean doubted = bank.changes().isEmpty() || interval.doubtSd() < SETTLED_SD
                ? unsure.doubts(cup, empty, reading, bank.unit())
                : !cup.full() && !cup.possibleIn(bank.unit());
        unsure = unsure.withCup(doubted);
        if (doubted) {
            return;
        }
        if (!cup.full() && !empty) {
            forecast(reading.at(), interval, value, row.scatter());
        }
        if (cup.full()) {
            branches.all(track -> track.amountBeyond(bank.model(), interval, value, true, row.scatter()));
        } else if (empty) {
            branches.all(track -> track.amountBeyond(bank.model(), interval, Math.log(EMPTY_SHARE), false, 0.4));
        } else {
            branches.all(track -> track.amount(bank.model(), interval, value, row.scatter()));
        }
        amountReadAt = reading.at();
    }

    /** What was expected of an amount, before it is taken in. */
    private void forecast(Instant at, Interval interval, double value, double sd) {
        boolean settled = interval.doubtSd() < SETTLED_SD;
        if (amountReadAt != null && settled && Bank.days(amountReadAt, at) > FORECAST_DAYS) {
            forecasts = forecasts.came(bank.amount(sd), value);
        }
    }
}
