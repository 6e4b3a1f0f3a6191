package io.github.weirwise.demo.window;

import io.github.weirwise.demo.panel.Slices;
import io.github.weirwise.demo.panel.Told;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics;
import java.awt.GraphicsConfiguration;
import java.awt.image.VolatileImage;
import javax.swing.JComponent;

/**
 * Paints what is out of sight once, a few parts an event and onto nothing that is seen. What is slow the first time (classes,
 * letters, pictures on buttons) is then done when somebody turns to it.
 */
final class PaintAhead {
    /** Parts that are painted in one event. */
    private static final int AT_ONCE = 3;
    /** Where a part is wider or higher, the rest of it is painted when it is seen. */
    private static final int SIDE = 700;

    private PaintAhead() {}

    /** Adds the painting of a part and all that is in it, pages that are hidden included. */
    static void paint(JComponent part, Slices slices) {
        if (part instanceof Told) {
            // A picture or a chart is drawn beside the event thread when it is seen.
            return;
        }
        if (parts(part) <= AT_ONCE) {
            slices.add(() -> once(part));
            return;
        }
        for (Component inner : part.getComponents()) {
            if (inner instanceof JComponent next) {
                paint(next, slices);
            }
        }
    }

    private static int parts(Component part) {
        int count = 1;
        if (part instanceof Container container) {
            for (Component inner : container.getComponents()) {
                count += parts(inner);
            }
        }
        return count;
    }

    private static void once(JComponent part) {
        GraphicsConfiguration screen = part.getGraphicsConfiguration();
        if (screen == null || part.getWidth() <= 0 || part.getHeight() <= 0) {
            return;
        }
        VolatileImage nowhere =
                screen.createCompatibleVolatileImage(Math.min(part.getWidth(), SIDE), Math.min(part.getHeight(), SIDE));
        Graphics graphics = nowhere.createGraphics();
        try {
            part.paint(graphics);
        } finally {
            graphics.dispose();
            nowhere.flush();
        }
    }
}
