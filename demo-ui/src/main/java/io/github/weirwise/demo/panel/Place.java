package io.github.weirwise.demo.panel;

import java.awt.Dimension;
import javax.swing.JScrollPane;

/** Holds one thing at the size of its place; where the place is lower than the thing can be, it scrolls. */
public final class Place extends Stack implements Scrolled {
    private static final long serialVersionUID = 1L;

    private final JScrollPane around = Scrolled.around(this);

    @Override
    public void updateUI() {
        super.updateUI();
        if (around != null) {
            Scrolled.plain(around);
        }
    }

    /** What goes into the window. */
    public JScrollPane outside() {
        return around;
    }

    @Override
    public Dimension getPreferredSize() {
        return fits() ? super.getPreferredSize() : getMinimumSize();
    }
}
