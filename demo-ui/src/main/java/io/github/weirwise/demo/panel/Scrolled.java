package io.github.weirwise.demo.panel;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;

/** Content that is as wide as its scroll pane, and as high where it can be made as low as that. */
interface Scrolled extends Scrollable {
    /** A line of text, in pixels. */
    int LINE_PX = 16;

    /** Whether the place in which it stands is high enough for it. */
    default boolean fits() {
        Component self = (Component) this;
        return self.getParent() == null || self.getParent().getHeight() >= self.getMinimumSize().height;
    }

    @Override
    default Dimension getPreferredScrollableViewportSize() {
        return ((Component) this).getMinimumSize();
    }

    @Override
    default int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return LINE_PX;
    }

    @Override
    default int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(LINE_PX, visible.height - LINE_PX);
    }

    @Override
    default boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    default boolean getScrollableTracksViewportHeight() {
        return fits();
    }

    /** Lets a part scroll up and down, without a frame and with what is behind it shining through. */
    static JScrollPane around(Component part) {
        JScrollPane around =
                new JScrollPane(part, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        around.getVerticalScrollBar().setUnitIncrement(LINE_PX);
        plain(around);
        return around;
    }

    /** Takes away frame and ground, which another look and feel brings back. */
    static void plain(JScrollPane around) {
        around.setBorder(BorderFactory.createEmptyBorder());
        around.setOpaque(false);
        around.getViewport().setOpaque(false);
    }
}
