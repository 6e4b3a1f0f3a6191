package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.SavedTank;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.report.Count;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** What of the tuning is kept when the window closes: the invented tank's days. */
final class Keeping {
    private final Unfinished unfinished;
    private final Supplier<TankDesk> untouched;
    private final Consumer<TankDesk> tank;
    private Journal atFirst = Journal.EMPTY;
    private Optional<Desk> at = Optional.empty();

    Keeping(Unfinished unfinished, Supplier<TankDesk> untouched, Consumer<TankDesk> tank) {
        this.unfinished = unfinished;
        this.untouched = untouched;
        this.tank = tank;
    }

    /** Offers what was left the last time. */
    void begin() {
        unfinished.offer(Kept.Work.TANK, this::tankAgain);
        unfinished.keep(Kept.Work.TANK, this::tankNow);
    }

    /** From now on this desk is tuned at; no more than what is in its journal by now is not worth keeping. */
    void tuneAt(Desk desk) {
        atFirst = desk.journal();
        at = Optional.of(desk);
        desk.onChange(() -> changed(desk));
    }

    private void changed(Desk desk) {
        if (at.filter(now -> now == desk).isPresent() && desk instanceof TankDesk) {
            unfinished.changed(Kept.Work.TANK);
        }
    }

    private Optional<Supplier<String>> tankNow() {
        return at.filter(TankDesk.class::isInstance)
                .map(desk -> ((TankDesk) desk).saved())
                .filter(saved -> !saved.journal().equals(atFirst))
                .map(saved -> () -> SavedTank.of(saved));
    }

    private Optional<Unfinished.Found> tankAgain(String document) {
        return SavedTank.again(document, untouched)
                .map(desk -> new Unfinished.Found(
                        Words.phrase(
                                "offer.tank",
                                desk.clock().when(desk.now()),
                                Count.of(desk.journal().entries().size(), "report.count.entries")),
                        () -> tank.accept(desk)));
    }
}
