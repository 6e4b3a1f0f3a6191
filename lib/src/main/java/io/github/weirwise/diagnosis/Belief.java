package io.github.weirwise.diagnosis;

import io.github.weirwise.internal.kept.KeptBytes;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Sum;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;

/**
 * What a journal says about one unit: branches (no part faulty, one, two), each followed by an extended Kalman filter over the
 * sums for level and amount. No random numbers: the same journal gives the same belief. Immutable; {@link #extended} takes in what
 * came since, at the cost of that alone.
 *
 * @since 0.2
 */
public final class Belief {
    /** What is foretold is foretold for a day on, and for this many days after that. */
    private static final double LATER_DAYS = 2;

    private static final double DAY = 1;
    /** Scatter of a look at a part, in sizes, and at a place, as a logarithm of the amount. */
    private static final double PART_SD = 0.18;

    private static final double PLACE_SD = 0.6;
    /** Scatter of the amount from day to day, a logarithm. */
    static final double AMOUNT_SD = 0.1;

    private final Bank kept;
    private final Bank bank;
    private final Instant now;
    private final Prospects prospects;
    private final Mixture amountNow;

    private Belief(Bank kept, Instant now) {
        this.kept = kept;
        this.now = now;
        this.bank = kept.copy();
        bank.readings().flooded();
        bank.forward(now);
        double[] weights = bank.branches().weights();
        List<Prospect> all = new ArrayList<>();
        for (int i = 0; i < weights.length; i++) {
            Moments tomorrow = bank.branches().moments(i).copy();
            Prior.forward(tomorrow, DAY);
            all.add(Prospect.of(weights[i], tomorrow, bank.model(), LATER_DAYS));
        }
        prospects = new Prospects(all);
        amountNow = bank.amount(AMOUNT_SD);
    }

    /**
     * The belief after a journal.
     *
     * @param unit nominal data of the unit
     * @param start settings as they were before the first entry
     * @param journal entries after {@code now} are left out
     * @param now the present
     */
    public static Belief of(SkimmerUnit unit, Settings start, Journal journal, Instant now) {
        Bank bank = new Bank(unit, start);
        bank.take(journal.entries(), now);
        return new Belief(bank, now);
    }

    /** The belief when more entries have come; those before the newest one known count as if they had come now. */
    public Belief extended(List<JournalEntry> more, Instant later) {
        Bank next = kept.copy();
        next.take(more, later);
        return new Belief(next, later);
    }

    /** All that has to be kept to go on from here without the entries so far; {@link #resumed} goes on. Of a bounded size. */
    public byte[] toBytes() {
        return KeptBytes.write(Bank.Kept.LAYOUT, kept.kept());
    }

    /**
     * A belief that was kept, at the time of its last entry.
     *
     * @param unit the same unit
     * @param bytes what {@link #toBytes} gave in the same version of the library
     * @throws IllegalArgumentException if they are anything else
     */
    public static Belief resumed(SkimmerUnit unit, byte[] bytes) {
        Bank.Kept kept = KeptBytes.read(Bank.Kept.LAYOUT, Bank.Kept.class, bytes);
        return new Belief(new Bank(unit, kept), kept.time().orElse(Instant.EPOCH));
    }

    /** All branches as they stand now, to be changed at will. */
    Bank bankNow() {
        return bank.copy();
    }

    /** The unit. */
    public SkimmerUnit unit() {
        return bank.unit();
    }

    /** Settings as the journal left them. */
    public Settings settings() {
        return bank.settings();
    }

    /** The present. */
    public Instant now() {
        return now;
    }

    /** Whether the air is noted as off. */
    public boolean airOff() {
        return bank.airOff();
    }

    /** The branches a day on. */
    public Prospects prospects() {
        return prospects;
    }

    /** The amount now. */
    public Mixture amountNow() {
        return amountNow;
    }

    /** A sum other than the amount, now. */
    public Mixture sum(Sum sum, double sd) {
        return bank.branches().sum(bank.model(), sum, sd);
    }

    /** What a reading of an instrument will show; empty when it shows neither a sum nor one part. */
    public Optional<Foresight> foresee(Instrument row) {
        if (row.sum().isPresent()) {
            return Optional.of(foresee(row.scatter(), (moments, gradient) -> {
                double mean = row.factor() * bank.model().value(row.sum().get(), moments.mean(), gradient);
                for (int i = 0; i < State.SIZE; i++) {
                    gradient[i] *= row.factor();
                }
                return mean;
            }));
        }
        return row.showsPart()
                ? Optional.of(foresee(
                        row.scatter(), State.of(row.measures().iterator().next())))
                : Optional.empty();
    }

    /** What a look at a part or place will show. */
    public Optional<Foresight> foresee(Part part) {
        if (part == Part.SUMP_LEVEL) {
            return Optional.empty();
        }
        return Optional.of(State.of(part) >= 0 ? foresee(PART_SD, State.of(part)) : foresee(PLACE_SD, State.PASSING));
    }

    private Foresight foresee(double sd, int component) {
        return foresee(sd, (moments, gradient) -> {
            gradient[component] = 1;
            return moments.mean(component);
        });
    }

    /** @param shown fills the gradient of what will be seen and gives its mean */
    private Foresight foresee(double sd, ToDoubleBiFunction<Moments, double[]> shown) {
        List<Prospect.Foretold> branches = new ArrayList<>();
        double[] gradient = new double[State.SIZE];
        for (Prospect each : prospects.branches()) {
            double mean = shown.applyAsDouble(each.moments(), gradient);
            branches.add(new Prospect.Foretold(each, mean, gradient, sd));
        }
        return new Foresight(branches);
    }

    /** Chance that a part is fouled over a size now. */
    public double chanceOver(Part part, double size) {
        return bank.branches().chanceOver(part, size);
    }

    /** Size of a part now and its standard deviation over all branches. */
    public Mixture size(Part part) {
        return bank.branches().component(State.of(part));
    }

    /**
     * The instrument whose newest reading cannot be, or is so far from everything known that it counts only once it was read a second
     * time; empty when none does.
     */
    public Optional<Instrument> toReadAgain() {
        return bank.readings().unsure().toReadAgain();
    }

    /** What passes, as a logarithm of the amount. */
    public Mixture passing() {
        return bank.branches().component(State.PASSING);
    }

    /** The unit's own foaminess, as a logarithm of the amount. */
    public Mixture foaminess() {
        return bank.branches().component(State.FOAM);
    }

    /**
     * What is told of the unit now.
     *
     * @param floodLog logarithm of the amount over the wanted one from which cup and drain are overrun
     */
    public Diagnosis diagnosis(double floodLog) {
        return new Diagnoses(this, bank).tell(floodLog);
    }

    /** The two sums as shares of what is missing or too much. */
    public Ledgers ledgers() {
        return Ledgers.of(bank);
    }

    /** By how much ranges are widened (over 1) or narrowed by this unit's past forecasts. */
    public double width() {
        return bank.readings().forecasts().width();
    }

    /** Of the newest forecasts (20 at most) how many there were. */
    public int forecastsMade() {
        return bank.readings().forecasts().remembered();
    }

    /** Of those how many held. */
    public int forecastsHeld() {
        return bank.readings().forecasts().held();
    }

    /** When something was last changed: weir, air, flow, a service. */
    public Optional<Instant> lastChange() {
        return bank.lastChange();
    }

    /** Whether the newest change was a service. */
    public boolean lastChangeWasService() {
        return !bank.changes().isEmpty()
                && bank.changes().get(bank.changes().size() - 1).byMm() == 0;
    }

    /** The newest service of a part. */
    public Optional<Instant> service(Part part) {
        return Optional.ofNullable(bank.history().services().get(part));
    }

    /** The newest look at a part. */
    public Optional<Instant> look(Part part) {
        return Optional.ofNullable(bank.history().looks().get(part));
    }

    /** What the newest look since the last service found. */
    public Optional<Finding> finding(Part part) {
        return Optional.ofNullable(bank.history().findings().get(part));
    }

    /** When an instrument was last read. */
    public Optional<Instant> reading(Instrument row) {
        return Optional.ofNullable(bank.history().readings().get(row));
    }

    /** What an instrument last showed. */
    public Optional<Observation> value(Instrument row) {
        return Optional.ofNullable(bank.history().values().get(row));
    }

    /** The usual time between the last visits. */
    public Optional<Duration> rhythm() {
        return bank.history().rhythm();
    }

    /** When something last happened. */
    public Optional<Instant> happening(Happening.Kind kind) {
        return Optional.ofNullable(bank.history().happenings().get(kind));
    }
}
