package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.SkimmateColour;
import io.github.weirwise.reading.DarknessWord;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import javax.swing.Icon;

/** A white vial filled with skimmate of the darkness that a word stands for. */
public final class SwatchIcon implements Icon {
    private static final int WIDTH = 42;
    private static final int HEIGHT = 30;

    private final DarknessWord word;
    private final Palette palette;

    /** The vial of a word. */
    public SwatchIcon(DarknessWord word, Palette palette) {
        this.word = word;
        this.palette = palette;
    }

    @Override
    public void paintIcon(Component component, Graphics g, int x, int y) {
        Graphics2D graphics = (Graphics2D) g.create();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setColor(Color.WHITE);
            graphics.fill(new RoundRectangle2D.Double(x + 2, y + 1, WIDTH - 4, HEIGHT - 2, 7, 7));
            graphics.setColor(SkimmateColour.of(word));
            graphics.fill(new RoundRectangle2D.Double(x + 2, y + 6, WIDTH - 4, HEIGHT - 7, 7, 7));
            graphics.setColor(palette.muted());
            graphics.draw(new RoundRectangle2D.Double(x + 2, y + 1, WIDTH - 4, HEIGHT - 2, 7, 7));
        } finally {
            graphics.dispose();
        }
    }

    @Override
    public int getIconWidth() {
        return WIDTH;
    }

    @Override
    public int getIconHeight() {
        return HEIGHT;
    }
}
