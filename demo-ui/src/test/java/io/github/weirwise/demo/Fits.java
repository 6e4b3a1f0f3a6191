package io.github.weirwise.demo;

import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.demo.panel.Stack;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.CellRendererPane;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JScrollBar;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;

/** Tells what is cut off or lies over something else in a screen that was laid out. */
public final class Fits {
    /** The ring of the focus is drawn around a button, over the edge of what holds it. */
    private static final int RING_PX = 4;

    private final Container root;
    private final List<String> faults = new ArrayList<>();

    private Fits(Container root) {
        this.root = root;
    }

    /** What does not fit, a line each; empty when all does. */
    public static List<String> faults(Container root) {
        Fits fits = new Fits(root);
        fits.look(root, new Rectangle(0, 0, root.getWidth(), root.getHeight()));
        return fits.faults;
    }

    /**
     * Everything in sight lies in what holds it; only a viewport may hold what is higher than itself.
     *
     * @param room where there is room, as seen from {@code holder}
     */
    private void look(Container holder, Rectangle room) {
        List<Component> seen = new ArrayList<>();
        for (Component part : holder.getComponents()) {
            if (!part.isVisible() || part instanceof CellRendererPane) {
                continue;
            }
            Rectangle at = part.getBounds();
            boolean scrolls = holder instanceof JViewport;
            if (at.x < room.x - RING_PX || at.x + at.width > room.x + room.width + RING_PX) {
                tell(part, "is cut at the side: " + at + " in " + room);
            }
            if (!scrolls && (at.y < room.y - RING_PX || at.y + at.height > room.y + room.height + RING_PX)) {
                tell(part, "is cut at the top or bottom: " + at + " in " + room);
            }
            for (Component other : seen) {
                Rectangle both = other.getBounds().intersection(at);
                if (both.width > RING_PX && both.height > RING_PX && !(holder instanceof Stack)) {
                    tell(part, "lies over " + name(other) + ": " + both);
                }
            }
            seen.add(part);
            words(part);
            boolean whole = part instanceof JComboBox || part instanceof JSpinner || part instanceof JScrollBar;
            if (part instanceof Container inner && !whole) {
                look(inner, new Rectangle(0, 0, part.getWidth(), part.getHeight()));
            }
        }
    }

    /** What has words has room for them; a heading that is cut tells them all when pointed at. */
    private void words(Component part) {
        if (part instanceof Prose prose && prose.getHeight() + 1 < prose.getPreferredSize().height) {
            tell(part, "has lines that are not seen: " + prose.getHeight() + " of " + prose.getPreferredSize().height);
        }
        boolean told = part instanceof JLabel label && label.getToolTipText() != null
                || part instanceof AbstractButton button && button.getToolTipText() != null;
        boolean counts = part instanceof JLabel || part instanceof AbstractButton || part instanceof JTextField;
        if (counts && !told) {
            Dimension wanted = part instanceof JTextField ? part.getMinimumSize() : part.getPreferredSize();
            if (part.getWidth() < wanted.width || part.getHeight() < wanted.height) {
                tell(part, "is smaller than its words: " + part.getSize() + " for " + wanted);
            }
        }
    }

    private void tell(Component part, String what) {
        faults.add(name(part) + " " + what + " at "
                + SwingUtilities.convertRectangle(part.getParent(), part.getBounds(), root));
    }

    private static String name(Component part) {
        String words = part instanceof AbstractButton button
                ? button.getText()
                : part instanceof JLabel label ? label.getText() : part instanceof Prose prose ? prose.getText() : "";
        return part.getClass().getSimpleName() + " " + part.getName() + " \"" + words + "\"";
    }
}
