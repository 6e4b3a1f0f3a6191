package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.SkimmateColour;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import javax.swing.Icon;

/** A white vial filled with skimmate of a darkness, in the computed colour. */
final class SwatchIcon implements Icon {
    private static final int WIDTH = 30;
    private static final int HEIGHT = 30;

    private final double ptCo;
    private final Palette palette;

    SwatchIcon(double ptCo, Palette palette) {
        this.ptCo = ptCo;
        this.palette = palette;
    }

    @Override
    public void paintIcon(Component component, Graphics g, int x, int y) {
        Graphics2D graphics = (Graphics2D) g.create();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setColor(java.awt.Color.WHITE);
            graphics.fill(new RoundRectangle2D.Double(x + 2, y + 1, WIDTH - 4, HEIGHT - 2, 7, 7));
            graphics.setColor(SkimmateColour.of(ptCo));
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
