package io.github.weirwise.demo.window;

import io.github.weirwise.demo.care.OwnTank;
import io.github.weirwise.demo.desk.Attempt;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.start.UnitLine;
import io.github.weirwise.demo.start.UnitList;
import io.github.weirwise.json.WeirwiseJson;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.setup.Installation;
import io.github.weirwise.sheet.HandOver;
import io.github.weirwise.sheet.HandOverSheet;
import io.github.weirwise.unit.SkimmerUnit;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** One's own units: which journals there are, what is typed for them, and what is done with their files. */
final class OwnUnits implements UnitList.Deeds, OwnTank {
    private final Shelf shelf = new Shelf();
    private final Background background;
    private final Asking asking;
    private final Papers papers;
    private final Consumer<Phrase> tell;
    private final Supplier<Dress> dress;
    private final UnitList list;
    private final Clock clock = Clock.systemDefaultZone();
    private final Map<SkimmerUnit, FitCheck> fits = new HashMap<>();
    private Consumer<Map<String, String>> tank = kept -> {};
    private Optional<Unfinished> unfinished = Optional.empty();

    OwnUnits(Background background, Asking asking, Papers papers, Consumer<Phrase> tell, Supplier<Dress> dress) {
        this.background = background;
        this.asking = asking;
        this.papers = papers;
        this.tell = tell;
        this.dress = dress;
        list = new UnitList(this, dress.get());
        papers.draftOfUnit(() -> shelf.draft(Shelf.NEW), typed -> typed(Shelf.NEW, typed));
    }

    UnitList list() {
        return list;
    }

    /** Keeps the list and what is typed from now on, and takes over what was kept. */
    void keep(Unfinished work, Kept kept) {
        unfinished = Optional.of(work);
        work.keep(Kept.Work.JOURNALS, () -> {
            String text = shelf.text();
            return Optional.of(() -> text);
        });
        background.run(() -> kept.found(Kept.Work.JOURNALS), found -> {
            found.ifPresent(shelf::read);
            tank.accept(shelf.draft(Shelf.TANK));
            look();
        });
    }

    private void typed(Path journal, Map<String, String> typed) {
        shelf.draft(journal, typed);
        unfinished.ifPresent(work -> work.changed(Kept.Work.JOURNALS));
    }

    private void changed() {
        unfinished.ifPresent(work -> work.changed(Kept.Work.JOURNALS));
        look();
    }

    /** Reads the journals anew, away from the event thread, and shows what they say. */
    void look() {
        List<Path> journals = shelf.journals();
        background.run(
                () -> journals.stream().map(path -> UnitLine.of(path, clock)).toList(), list::show);
    }

    /** A journal was opened or begun: it is the first of the list, and what was typed for it stands in its boxes again. */
    void opened(FileDesk file, RoundUse round) {
        if (file.title().equals(shelf.draft(Shelf.NEW).get("name"))) {
            shelf.draft(Shelf.NEW, Map.of());
        }
        shelf.add(file.path());
        round.again(shelf.draft(file.path()));
        round.onTyped(typed -> typed(file.path(), typed));
        changed();
    }

    @Override
    public void open(Consumer<Installation> then) {
        papers.document(WeirwiseJson::readInstallation, "trouble.installation", then, dress.get());
    }

    @Override
    public void again(Consumer<Map<String, String>> form) {
        tank = form;
        form.accept(shelf.draft(Shelf.TANK));
    }

    @Override
    public void typed(Map<String, String> boxes) {
        typed(Shelf.TANK, boxes);
    }

    @Override
    public void checked(FitCheck check) {
        fits.put(check.installation().filter().unit(), check);
    }

    @Override
    public void go(Path journal) {
        papers.open(journal);
    }

    @Override
    public void rename(Path journal) {
        asking.newName(String.valueOf(journal.getFileName()), dress.get()).ifPresent(name -> {
            Path to = journal.resolveSibling(name.endsWith("." + Dialogs.ENDING) ? name : name + "." + Dialogs.ENDING);
            file(
                    journal,
                    () -> {
                        if (Files.exists(to)) {
                            throw new FileAlreadyExistsException(to.toString());
                        }
                        return Files.move(journal, to);
                    },
                    () -> {
                        shelf.renamed(journal, to);
                        changed();
                    });
        });
    }

    @Override
    public void export(Path journal) {
        asking.fileToSave(String.valueOf(journal.getFileName()), dress.get())
                .ifPresent(to -> background.run(
                        () -> Attempt.of(journal, () -> copy(journal, to)),
                        attempt -> attempt.to(failure -> failure.ifPresent(tell), tell)));
    }

    /** A journal is never written over itself: what another program adds meanwhile would be lost. */
    private static Optional<Phrase> copy(Path journal, Path to) throws IOException {
        byte[] all = Files.readAllBytes(journal);
        return Files.exists(to) && Files.isSameFile(journal, to)
                ? Optional.empty()
                : SavedText.write(to, file -> file.write(all));
    }

    @Override
    public void print(Path journal) {
        background.run(
                () -> Attempt.of(journal, () -> FileDesk.open(journal, clock)),
                attempt -> attempt.to(desk -> papers.save("hand-over.html", () -> sheet(desk), dress.get()), tell));
    }

    private String sheet(FileDesk desk) {
        Optional<FitCheck> fit = Optional.ofNullable(fits.get(desk.unit()));
        HandOver over = HandOver.of(desk.unit(), desk.settings(), desk.journal(), fit, desk.now());
        return new HandOverSheet(dress.get().words().book(), clock.getZone()).of(over);
    }

    @Override
    public void drop(Path journal) {
        if (asking.sure(dress.get().text("start.sure", String.valueOf(journal.getFileName())), dress.get())) {
            shelf.drop(journal);
            changed();
        }
    }

    private void file(Path journal, Callable<Path> work, Runnable then) {
        background.run(() -> Attempt.of(journal, work), attempt -> attempt.to(done -> then.run(), tell));
    }
}
