package io.github.weirwise.demo.panel;

import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import net.miginfocom.swing.MigLayout;

/** Content that is as wide as the scroll pane that holds it and as high as it needs. */
public final class Sheet extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1L;
    private static final int LINE_PX = 16;

    /** An empty sheet of two columns, names and what belongs to them. */
    public Sheet() {
        this("[]10[grow,fill]");
    }

    /** An empty sheet with the given columns of MigLayout. */
    public Sheet(String columns) {
        super(new MigLayout("insets 0, fillx, hidemode 3", columns, ""));
        setOpaque(false);
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return LINE_PX;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(LINE_PX, visible.height - LINE_PX);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
