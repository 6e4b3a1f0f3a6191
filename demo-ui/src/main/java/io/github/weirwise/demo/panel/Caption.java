package io.github.weirwise.demo.panel;

import java.awt.Dimension;
import javax.swing.JLabel;

/**
 * A label with a little room to spare: letters are set in whole device pixels, so at another scale a text may be some
 * pixels wider than it was measured.
 */
public final class Caption extends JLabel {
    private static final long serialVersionUID = 1L;
    private static final double SPARE = 0.04;

    @Override
    public Dimension getPreferredSize() {
        Dimension size = super.getPreferredSize();
        return getText() == null || getText().isEmpty()
                ? size
                : new Dimension(size.width + 1 + (int) Math.ceil(SPARE * size.width), size.height);
    }

    /** A caption is never cut: fields and sliders give way first. */
    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }
}
