package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Pieces;
import io.github.weirwise.demo.panel.Slices;
import java.awt.BorderLayout;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** A use whose screen is made piece by piece, a piece an event, so that keys and mouse are heard in between. */
abstract class UseOfPieces implements Use {
    private final String key;
    private final JPanel controls = new JPanel(new BorderLayout());
    private final JPanel panel;
    private final Slices slices;
    private final Pieces pieces;
    private Dress dress;

    /** @param rows of the screen beside the picture, as MigLayout has them */
    UseOfPieces(String key, String rows, Background background, Dress dress) {
        this.key = key;
        this.dress = dress;
        panel = new JPanel(new MigLayout("insets 0, fill, wrap 1, gapy 10", "[grow,fill]", rows));
        controls.setOpaque(false);
        panel.setOpaque(false);
        slices = new Slices(background);
        pieces = new Pieces(slices, panel, controls);
    }

    @Override
    public final String key() {
        return key;
    }

    @Override
    public final JPanel controls() {
        return controls;
    }

    @Override
    public final JComponent panel() {
        return panel;
    }

    final Pieces pieces() {
        return pieces;
    }

    final Dress dress() {
        return dress;
    }

    @Override
    public void refresh() {
        pieces.refresh();
    }

    @Override
    public void dress(Dress other) {
        dress = other;
        pieces.dress(other);
    }

    @Override
    public final void build(Runnable between, Runnable last) {
        slices.between(between);
        slices.add(last);
        slices.start();
    }
}
