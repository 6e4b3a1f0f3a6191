package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Palette;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import javax.swing.Icon;

/** Marks a state by shape and colour: a ring, a triangle, a filled square, a tick. */
final class MarkIcon implements Icon {
    private static final int SIZE = 16;

    private final Row.Mark mark;
    private final Palette palette;

    MarkIcon(Row.Mark mark, Palette palette) {
        this.mark = mark;
        this.palette = palette;
    }

    @Override
    public void paintIcon(Component component, Graphics g, int x, int y) {
        Graphics2D graphics = (Graphics2D) g.create();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setStroke(new BasicStroke(2));
            graphics.translate(x, y);
            Path2D path = new Path2D.Double();
            switch (mark) {
                case GOOD -> {
                    graphics.setColor(palette.good());
                    graphics.draw(new Ellipse2D.Double(3, 3, 10, 10));
                }
                case MIND -> {
                    graphics.setColor(palette.second());
                    path.moveTo(8, 2.5);
                    path.lineTo(14, 13);
                    path.lineTo(2, 13);
                    path.closePath();
                    graphics.draw(path);
                }
                case BAD -> {
                    graphics.setColor(palette.danger());
                    graphics.fill(new Rectangle2D.Double(2.5, 2.5, 11, 11));
                }
                case DONE -> {
                    graphics.setColor(palette.muted());
                    path.moveTo(3, 8.5);
                    path.lineTo(6.5, 12);
                    path.lineTo(13, 4);
                    graphics.draw(path);
                }
            }
        } finally {
            graphics.dispose();
        }
    }

    @Override
    public int getIconWidth() {
        return SIZE;
    }

    @Override
    public int getIconHeight() {
        return SIZE;
    }
}
