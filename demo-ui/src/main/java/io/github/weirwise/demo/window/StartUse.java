package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.TankTime;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Pieces;
import io.github.weirwise.demo.panel.Pieces.Piece;
import io.github.weirwise.demo.panel.Slices;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.demo.start.BeginCard;
import io.github.weirwise.demo.start.UnitList;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The start page: one's own units on the left, the invented tank and practice apart from them on the right. */
final class StartUse implements Use {
    static final String KEY = "use.start";

    private final UnitList units;
    private final Supplier<Desk> desk;
    private final Runnable look;
    private final JPanel controls = new JPanel();
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy 10", "[grow,fill]", ""));
    private final Slices slices;
    private final Pieces pieces;
    private Dress dress;

    /**
     * @param look reads the units' journals anew
     * @param own ways to begin with an own unit, by the names of their buttons
     * @param invented ways to the invented tank
     * @param practice ways to practice
     */
    StartUse(
            UnitList units,
            Supplier<Desk> desk,
            Runnable look,
            Map<String, Runnable> own,
            Map<String, Runnable> invented,
            Map<String, Runnable> practice,
            Background background,
            Dress dress) {
        this.units = units;
        this.desk = desk;
        this.look = look;
        this.dress = dress;
        controls.setOpaque(false);
        panel.setOpaque(false);
        slices = new Slices(background);
        pieces = new Pieces(slices, panel);
        Map<String, Map<String, Runnable>> cards = new LinkedHashMap<>();
        cards.put("own", own);
        cards.put("invented", invented);
        cards.put("practice", practice);
        cards.forEach((key, ways) -> pieces.add(() -> {
            BeginCard card = new BeginCard(key, ways, this.dress);
            panel.add(card, "wmin 0");
            return Piece.still(card::dress);
        }));
    }

    @Override
    public String key() {
        return KEY;
    }

    @Override
    public Optional<JComponent> picture() {
        return Optional.of(units);
    }

    @Override
    public JComponent controls() {
        return controls;
    }

    @Override
    public JComponent panel() {
        return panel;
    }

    @Override
    public Scene scene() {
        return desk.get().scene();
    }

    @Override
    public void moveWeir(double crestMm) {
        // There is no weir here.
    }

    @Override
    public Optional<TankTime> time() {
        return Optional.empty();
    }

    @Override
    public String title(Dress other) {
        return other.text("start.units");
    }

    /** Turning to the page reads the journals anew. */
    @Override
    public void refresh() {
        look.run();
    }

    @Override
    public void dress(Dress other) {
        dress = other;
        units.dress(other);
        pieces.dress(other);
    }

    @Override
    public void onChange(Runnable listener) {
        // Nothing changes here by itself.
    }

    @Override
    public void build(Runnable between, Runnable last) {
        slices.between(between);
        slices.add(last);
        slices.start();
    }
}
