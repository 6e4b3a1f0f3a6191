package io.github.weirwise.demo.panel;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;

/** Something that is drawn anew, smoothly, whenever it is painted. */
public abstract class Drawn extends Told {
    private static final long serialVersionUID = 1L;

    /** A drawing called so, of a least and a wanted size. */
    protected Drawn(String name, Dimension least, Dimension wanted) {
        setName(name);
        setMinimumSize(least);
        setPreferredSize(wanted);
    }

    /** Draws it, smoothly. */
    protected abstract void draw(Graphics2D graphics);

    @Override
    protected final void paintComponent(Graphics g) {
        Graphics2D graphics = (Graphics2D) g.create();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            draw(graphics);
        } finally {
            graphics.dispose();
        }
    }
}
