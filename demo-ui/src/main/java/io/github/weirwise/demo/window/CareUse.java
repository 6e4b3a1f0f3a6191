package io.github.weirwise.demo.window;

import io.github.weirwise.demo.care.CarePages;
import io.github.weirwise.demo.care.OwnTank;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.desk.TankTime;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.picture.Scene;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;

/** Setting up and looking after the unit that is tuned. */
final class CareUse extends UseOfPieces {
    private final Supplier<Desk> desk;
    private final Supplier<Optional<JComponent>> picture;

    /** @param picture what stands in the picture's place for a real unit */
    CareUse(
            Supplier<Desk> desk,
            Supplier<Optional<JComponent>> picture,
            Background background,
            OwnTank tank,
            Saving saving,
            Dress dress) {
        super("use.care", "[grow,fill]", background, dress);
        this.desk = desk;
        this.picture = picture;
        panel().add(CarePages.of(desk, pieces(), controls(), tank, saving, this::dress), "grow, push, wmin 0, hmin 0");
    }

    @Override
    public Optional<JComponent> picture() {
        return picture.get();
    }

    @Override
    public Scene scene() {
        return desk.get().scene();
    }

    @Override
    public void moveWeir(double crestMm) {
        if (desk.get() instanceof TankDesk tank) {
            tank.moveWeir(crestMm);
        }
    }

    @Override
    public Optional<TankTime> time() {
        return desk.get() instanceof TankTime clock ? Optional.of(clock) : Optional.empty();
    }

    @Override
    public String title(Dress dress) {
        return desk.get().title();
    }
}
