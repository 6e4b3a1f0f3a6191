package io.github.weirwise.demo.desk;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.advice.Step;
import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.reading.AdviceGiven;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The tuning of one unit, invented or real: what is noted and advised. Lives on one thread (the event thread in the
 * window); tells its listeners after every change.
 */
public abstract class Desk {
    private final SkimmerUnit unit;
    private final Settings told;
    private final List<Runnable> listeners = new ArrayList<>();
    private final Writing writing = new Writing();
    private Consumer<Phrase> trouble = phrase -> {};
    private Journal journal;
    private Optional<Advice> advice = Optional.empty();
    private boolean stepTaken;

    /** A desk for a unit that was set as told when its journal began. */
    protected Desk(SkimmerUnit unit, Settings told, Journal journal) {
        this.unit = unit;
        this.told = told;
        this.journal = journal;
    }

    /** The present of this unit. */
    public abstract Instant now();

    /** How the unit is set now, as far as it shows. */
    public abstract Settings settings();

    /** The moment as a picture. */
    public abstract Scene scene();

    /** The level and amount between readings, where they are known. */
    public abstract List<History.Point> points();

    /** Day 1 begins with this instant. */
    public abstract Instant start();

    /** How its times are told. */
    public Clock clock() {
        return Clock.invented(start());
    }

    /** What it is called. */
    public abstract String title();

    /** Does physically what was advised, where that can be done from here, and gives what to note. */
    protected abstract List<JournalEntry> take(Advice given);

    /** Sets the unit itself; a real one is set by hand. */
    protected abstract void setTo(Settings settings);

    /** Keeps an entry for good before it counts, on any thread; throws {@link JournalTrouble} when it cannot. */
    protected abstract void keep(JournalEntry entry);

    /** Takes the newest entry away again, for good, on any thread; throws {@link JournalTrouble} when it cannot. */
    protected abstract void discard(JournalEntry entry);

    /** Calls this after every change. */
    public void onChange(Runnable listener) {
        listeners.add(listener);
    }

    /** Tells this when something could not be written; what was not written does not count. */
    public final void onTrouble(Consumer<Phrase> listener) {
        trouble = listener;
    }

    /** Writes away from the event thread from now on. */
    public final void writeIn(Background background) {
        writing.in(background);
    }

    /** Tells this whenever writing begins or has ended. */
    public final void onBusy(Consumer<Boolean> listener) {
        writing.onBusy(listener);
    }

    /** Whether something is being written that does not count yet. */
    public final boolean busy() {
        return writing.busy();
    }

    protected final void changed() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    public final SkimmerUnit unit() {
        return unit;
    }

    /** Settings when the journal began, with nothing known of load and faults. */
    public final Settings told() {
        return told;
    }

    public final Journal journal() {
        return journal;
    }

    public final Optional<Advice> advice() {
        return advice;
    }

    /** Whether the advice has been followed already. */
    public final boolean stepTaken() {
        return stepTaken;
    }

    /** Takes over advice that was worked out elsewhere. */
    public final void advised(Advice given) {
        advice = Optional.of(given);
        stepTaken = false;
        changed();
    }

    /** Notes something; advice given before no longer holds. */
    public final void note(JournalEntry entry) {
        note(List.of(entry), () -> {});
    }

    /** Notes several things in their order, and does {@code then} when all of them count. */
    public final void note(List<? extends JournalEntry> entries, Runnable then) {
        if (entries.isEmpty()) {
            return;
        }
        keepAll(entries, () -> {
            advice = Optional.empty();
            stepTaken = false;
            then.run();
            changed();
        });
    }

    private void keepAll(List<? extends JournalEntry> entries, Runnable then) {
        List<Writing.Piece> pieces = new ArrayList<>();
        for (JournalEntry entry : entries) {
            pieces.add(new Writing.Piece(() -> keep(entry), () -> journal = journal.with(entry), this::failed));
        }
        pieces.add(new Writing.Piece(() -> {}, then, this::failed));
        writing.add(pieces);
    }

    /** What was to follow is left out: it would stand there without what belongs before it. */
    private void failed(Phrase phrase) {
        writing.leaveTheRest();
        trouble.accept(phrase);
        changed();
    }

    /** Whether there is a newest entry that can be taken back. */
    public boolean canUndo() {
        return !journal.entries().isEmpty();
    }

    /** Takes back the newest entry; of a step, all of it. */
    public final void undo() {
        if (!canUndo() || busy()) {
            return;
        }
        List<JournalEntry> entries = new ArrayList<>(journal.entries());
        List<Writing.Piece> pieces = new ArrayList<>();
        boolean step = Forecast.of(entries.get(entries.size() - 1)).isPresent();
        Instant at = entries.get(entries.size() - 1).at();
        do {
            JournalEntry last = entries.remove(entries.size() - 1);
            List<JournalEntry> left = List.copyOf(entries);
            pieces.add(new Writing.Piece(() -> discard(last), () -> undone(last, left), this::failed));
        } while (step && !entries.isEmpty() && isDone(entries.get(entries.size() - 1), at));
        writing.add(pieces);
    }

    private static boolean isDone(JournalEntry entry, Instant at) {
        boolean done = entry instanceof WeirMove || entry instanceof SettingChange || entry instanceof Service;
        return done && entry.at().equals(at);
    }

    private void undone(JournalEntry last, List<JournalEntry> left) {
        journal = new Journal(left);
        advice = Optional.empty();
        stepTaken = false;
        if (last instanceof WeirMove || last instanceof SettingChange) {
            setTo(replayed());
        }
        changed();
    }

    /** Settings after all that the journal says was done. */
    protected final Settings replayed() {
        Settings settings = told;
        for (JournalEntry entry : journal.entries()) {
            if (entry instanceof WeirMove move) {
                settings = settings.withWeirCrestMm(move.toCrestMm());
            } else if (entry instanceof SettingChange change) {
                settings = change.what() == SettingChange.Knob.FLOW
                        ? settings.withFlowLitresPerHour(change.litresPerHour())
                        : settings.withAirLitresPerHour(change.litresPerHour());
            }
        }
        return settings;
    }

    /** Puts a changed list of entries in place of the journal. */
    protected final void rewrite(List<JournalEntry> entries) {
        journal = new Journal(entries);
        advice = Optional.empty();
        changed();
    }

    /**
     * Marks the advised step as done and notes it with what is expected of it. A look is done by what is seen: at a real unit a
     * person notes that, so nothing happens here.
     */
    public final void takeStep() {
        if (advice.isEmpty() || busy() || stepTaken) {
            return;
        }
        Advice taken = advice.get();
        List<JournalEntry> entries = new ArrayList<>(take(taken));
        if (taken.step() instanceof Step.Look) {
            note(entries, () -> {});
            return;
        }
        entries.add(Forecast.of(taken, now()).asNote());
        keepAll(entries, () -> {
            stepTaken = true;
            changed();
        });
    }

    /** The look that is advised cannot be taken at this unit: it is not asked for again. */
    public final void cannotLook(LookKind look) {
        note(Cannot.note(now(), look));
    }

    /** The advised step was not taken. */
    public final void leaveStep(String step) {
        Optional<Advice> left = advice;
        note(List.of(new AdviceGiven(now(), step, AdviceGiven.Followed.NO)), () -> {
            advice = left;
            stepTaken = true;
        });
    }

    /** Something that was seen, and when. */
    public record Seen<T extends Observation>(T what, Instant at) {}

    /** The newest colour of the skimmate, by a word or by an instrument. */
    public final Optional<Seen<? extends Observation>> newestColour() {
        Optional<Seen<Observation.Darkness>> word = newest(Observation.Darkness.class);
        Optional<Seen<Observation.DarknessMatch>> match = newest(Observation.DarknessMatch.class);
        boolean later = match.isPresent()
                && word.filter(seen -> seen.at().isAfter(match.get().at())).isEmpty();
        return later ? Optional.of(match.get()) : word.map(seen -> seen);
    }

    /** The newest observation of a kind. */
    public final <T extends Observation> Optional<Seen<T>> newest(Class<T> kind) {
        List<Reading> readings = journal.all(Reading.class);
        for (int i = readings.size() - 1; i >= 0; i--) {
            Reading reading = readings.get(i);
            Optional<T> found = reading.find(kind);
            if (found.isPresent()) {
                return Optional.of(new Seen<>(found.get(), reading.at()));
            }
        }
        return Optional.empty();
    }
}
