package io.github.weirwise.demo;

import io.github.weirwise.Weirwise;
import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.desk.Cannot;
import io.github.weirwise.demo.desk.InventedTank;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.window.Kept;
import io.github.weirwise.demo.window.MainWindow;
import io.github.weirwise.demo.window.WarmUp;

/** Puts the pieces together: the invented tank, the library's adviser, the window. */
final class Front {
    /** The library's own answer; looks that cannot be taken at the unit are not asked for. */
    static final Adviser DOOR =
            (unit, atStart, journal, now) -> Weirwise.advise(unit, atStart, journal, now, Cannot.options(journal));

    static final int SEED = 20260302;

    private Front() {}

    private static TankDesk untouched() {
        return new TankDesk(InventedTank.of(SEED));
    }

    static TankDesk desk() {
        TankDesk desk = untouched();
        desk.liveThroughFirstDay();
        return desk;
    }

    static TankDesk warm(Adviser adviser, Options options) {
        return WarmUp.on(desk(), adviser, dress(options));
    }

    static Dress dress(Options options) {
        return new Dress(options.words(), Palette.of(options.dark()));
    }

    static void openWindow(Adviser adviser, Options options) {
        MainWindow.open(
                () -> warm(adviser, options),
                Front::untouched,
                options.keep().map(Kept::new).orElseGet(Kept::usual),
                adviser,
                dress(options),
                options.still());
    }
}
