package io.github.weirwise.demo.desk;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Step;
import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
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
        keepAll(entries, () -> {
            advice = Optional.empty();
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

    /** Takes back the newest entry. */
    public final void undo() {
        if (!canUndo() || busy()) {
            return;
        }
        List<JournalEntry> entries = new ArrayList<>(journal.entries());
        JournalEntry last = entries.remove(entries.size() - 1);
        writing.add(List.of(new Writing.Piece(() -> discard(last), () -> undone(last, entries), this::failed)));
    }

    private void undone(JournalEntry last, List<JournalEntry> left) {
        journal = new Journal(left);
        advice = Optional.empty();
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

    /** Sets the weir, or says that it was set. */
    public abstract void moveWeir(double crestMm);

    /** Sets the flow, or says that it was set. */
    public abstract void setFlow(double litresPerHour);

    /** Sets the air, or says that it was set. */
    public abstract void setAir(double litresPerHour);

    /** Puts a changed list of entries in place of the journal. */
    protected final void rewrite(List<JournalEntry> entries) {
        journal = new Journal(entries);
        advice = Optional.empty();
        changed();
    }

    /** Marks the advised step as done and notes it; without advice nothing happens. */
    public final void takeStep() {
        if (advice.isEmpty() || busy()) {
            return;
        }
        Advice taken = advice.get();
        keepAll(take(taken), () -> {
            advice = taken.step() instanceof Step.Look ? Optional.empty() : Optional.of(taken);
            stepTaken = true;
            changed();
        });
    }
}
