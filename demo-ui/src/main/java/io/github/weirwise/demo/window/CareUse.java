package io.github.weirwise.demo.window;

import io.github.weirwise.demo.care.CarePages;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.desk.TankTime;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.panel.Slices;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.setup.Installation;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComponent;

/** Setting up and looking after the unit that is tuned. */
final class CareUse implements Use {
    private final Supplier<Desk> desk;
    private final Supplier<Optional<JComponent>> picture;
    private final Slices slices;
    private final CarePages pages;

    /** @param picture what stands in the picture's place for a real unit */
    CareUse(
            Supplier<Desk> desk,
            Supplier<Optional<JComponent>> picture,
            Background background,
            Consumer<Consumer<Installation>> opening,
            Saving saving,
            Dress dress) {
        this.desk = desk;
        this.picture = picture;
        slices = new Slices(background);
        pages = new CarePages(desk, slices, opening, saving, dress);
    }

    @Override
    public String key() {
        return "use.care";
    }

    @Override
    public Optional<JComponent> picture() {
        return picture.get();
    }

    @Override
    public JComponent controls() {
        return pages.controls();
    }

    @Override
    public JComponent panel() {
        return pages.panel();
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

    @Override
    public void refresh() {
        pages.refresh();
    }

    @Override
    public void dress(Dress dress) {
        pages.dress(dress);
    }

    @Override
    public void build(Runnable between, Runnable last) {
        slices.between(between);
        slices.add(last);
        slices.start();
    }

    /** The desk tells of its changes by itself. */
    @Override
    public void onChange(Runnable listener) {
        // Nothing of its own changes here.
    }
}
