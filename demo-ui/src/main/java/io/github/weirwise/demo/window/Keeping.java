package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.SavedTank;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.reading.Journal;
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

    /** Takes up what was left the last time, unless somebody was quicker and has begun anew. */
    void begin() {
        unfinished.<TankDesk>takeUp(Kept.Work.TANK, text -> SavedTank.again(text, untouched), left -> {
            if (tankNow().isEmpty()) {
                tank.accept(left);
            }
        });
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
}
