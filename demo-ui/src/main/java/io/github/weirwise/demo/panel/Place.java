package io.github.weirwise.demo.panel;

import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;

/** Holds one thing at the size of its place; where the place is lower than the thing can be, it scrolls. */
public final class Place extends Stack implements Scrollable {
    private static final long serialVersionUID = 1L;
    private static final int LINE_PX = 16;

    private final JScrollPane around =
            new JScrollPane(this, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);

    /** An empty place. */
    public Place() {
        plain();
    }

    private void plain() {
        if (around != null) {
            around.setBorder(BorderFactory.createEmptyBorder());
            around.setOpaque(false);
            around.getViewport().setOpaque(false);
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        plain();
    }

    /** What goes into the window. */
    public JScrollPane outside() {
        return around;
    }

    @Override
    public Dimension getPreferredSize() {
        return fitsIn(getParent()) ? super.getPreferredSize() : getMinimumSize();
    }

    private boolean fitsIn(Container place) {
        return place == null || place.getHeight() >= getMinimumSize().height;
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getMinimumSize();
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
        return fitsIn(getParent());
    }
}
