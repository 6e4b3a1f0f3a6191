package io.github.weirwise.demo.desk;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Step;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.json.DocumentException;
import io.github.weirwise.json.JournalContents;
import io.github.weirwise.json.JournalFile;
import io.github.weirwise.json.SpoiltLine;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * The tuning of a real unit with its journal file. Nothing is set from here: what a hand did is noted, and every note is on
 * disk before it counts.
 */
public final class FileDesk extends Desk {
    private static final double USUAL_CUP_HOURS = 18;

    private final JournalFile file;
    private final List<SpoiltLine> spoilt;
    private final Clock clock;

    FileDesk(JournalFile file, JournalContents contents, Clock clock) {
        super(contents.unit(), contents.settings(), contents.journal());
        this.file = file;
        this.spoilt = contents.spoilt();
        this.clock = clock;
    }

    /**
     * Opens a journal that exists.
     *
     * @throws IOException if it cannot be read
     * @throws io.github.weirwise.json.DocumentException if it is not a journal
     */
    public static FileDesk open(Path path, Clock clock) throws IOException {
        JournalFile file = JournalFile.open(path);
        return new FileDesk(file, file.read(), clock);
    }

    /**
     * Begins a journal for a unit.
     *
     * @throws IOException if it cannot be written or the file is there already
     */
    public static FileDesk create(Path path, SkimmerUnit unit, Settings settings, Clock clock) throws IOException {
        JournalFile file = JournalFile.create(path, unit, settings);
        return new FileDesk(file, file.read(), clock);
    }

    /**
     * What the file holds now, as far as it can be read; may be asked on any thread.
     *
     * @throws IOException if it cannot be read
     * @throws DocumentException if it is no longer a journal
     */
    public Journal onDisk() throws IOException {
        return file.read().journal();
    }

    /**
     * Takes over what another program has added meanwhile.
     *
     * @return whether there was anything new
     */
    public boolean takeOver(Journal found) {
        if (found.equals(journal())) {
            return false;
        }
        rewrite(found.entries());
        return true;
    }

    /** Lines of the file that could not be read; they stay where they are. */
    public List<SpoiltLine> spoilt() {
        return spoilt;
    }

    public Path path() {
        return file.path();
    }

    @Override
    public Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }

    @Override
    public Instant start() {
        List<JournalEntry> entries = journal().entries();
        return entries.isEmpty() ? now() : entries.get(0).at();
    }

    @Override
    public io.github.weirwise.demo.look.Clock clock() {
        return io.github.weirwise.demo.look.Clock.real(start(), clock.getZone(), now());
    }

    @Override
    public String title() {
        return unit().name();
    }

    @Override
    public Settings settings() {
        return replayed();
    }

    @Override
    public List<History.Point> points() {
        return List.of();
    }

    /** All of it computed: no picture of it is shown, only what is wanted is taken from it. */
    @Override
    public Scene scene() {
        return Scene.atRest(unit(), settings(), USUAL_CUP_HOURS);
    }

    @Override
    protected List<JournalEntry> take(Advice given) {
        List<JournalEntry> done = new ArrayList<>();
        if (given.step() instanceof Step.MoveWeir move) {
            done.add(new WeirMove(now(), move.toCrestMm(), move.probe()));
        } else if (given.step() instanceof Step.ServicePart service) {
            service.parts().forEach(part -> done.add(new Service(now(), part)));
        } else if (given.step() instanceof Step.MakeSafe safe) {
            done.addAll(madeSafe(safe));
        }
        return done;
    }

    private List<JournalEntry> madeSafe(Step.MakeSafe safe) {
        List<JournalEntry> done = new ArrayList<>();
        if (safe.byMm() != 0) {
            done.add(new WeirMove(now(), safe.toCrestMm(), false));
        }
        switch (safe.how()) {
            case LESS_AIR, STOP_THE_AIR, START_THE_AIR ->
                done.add(new SettingChange(now(), SettingChange.Knob.AIR, safe.airLitresPerHour()));
            case START_PUMPS -> done.add(new Happening(now(), Happening.Kind.PUMP_RESTARTED));
            case LOWER_WEIR -> {}
        }
        return done;
    }

    @Override
    protected void setTo(Settings settings) {
        // A hand sets it.
    }

    @Override
    protected void keep(JournalEntry entry) {
        try {
            file.append(entry);
        } catch (IOException e) {
            throw JournalTrouble.writing(path(), e);
        } catch (DocumentException e) {
            throw JournalTrouble.notTaken(path(), e);
        }
    }

    @Override
    protected void discard(JournalEntry entry) {
        try {
            if (!file.withdraw(entry)) {
                throw JournalTrouble.changedElsewhere(path());
            }
        } catch (IOException e) {
            throw JournalTrouble.writing(path(), e);
        }
    }
}
