package io.github.weirwise.demo;

import io.github.weirwise.Weirwise;
import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.tank.TrainingTank;
import io.github.weirwise.demo.text.TuningRun;
import io.github.weirwise.demo.window.Kept;
import io.github.weirwise.demo.window.MainWindow;

/** Puts the pieces together: the invented tank, the library's adviser, the window. */
final class Front {
    /** The library's own answer. */
    static final Adviser DOOR = Weirwise::advise;

    private static final long SEED = 20260302;

    private Front() {}

    private static TankDesk untouched() {
        return new TankDesk(TrainingTank.tooLow(TuningRun.TOO_LOW_MM, TuningRun.HIDDEN_SKIMMABLE_MG_PER_LITRE), SEED);
    }

    static TankDesk desk() {
        TankDesk desk = untouched();
        desk.liveThroughFirstDay();
        return desk;
    }

    static Dress dress(Options options) {
        return new Dress(Words.ENGLISH, Palette.of(options.dark()));
    }

    static void openWindow(Adviser adviser, Options options) {
        MainWindow.open(
                Front::untouched,
                options.keep().map(Kept::new).orElseGet(Kept::usual),
                adviser,
                dress(options),
                options.still());
    }
}
