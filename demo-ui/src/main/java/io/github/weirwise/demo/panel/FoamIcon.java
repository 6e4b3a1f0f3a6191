package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.reading.FoamLookWord;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Random;
import javax.swing.Icon;

/** A look of the foam as a small drawing: neck, lip, and what stands in it or comes over. */
public final class FoamIcon implements Icon {
    private static final int WIDTH = 44;
    private static final int HEIGHT = 40;
    private static final double LEFT = 12;
    private static final double RIGHT = 32;
    private static final double LIP = 13;
    private static final double FOOT = 39;

    private final FoamLookWord look;
    private final Palette palette;

    public FoamIcon(FoamLookWord look, Palette palette) {
        this.look = look;
        this.palette = palette;
    }

    @Override
    public void paintIcon(Component component, Graphics g, int x, int y) {
        Graphics2D graphics = (Graphics2D) g.create();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.translate(x, y);
            inside(graphics);
            over(graphics);
            graphics.setColor(palette.glass());
            graphics.setStroke(new BasicStroke(2));
            graphics.draw(new Line2D.Double(LEFT, LIP, LEFT, FOOT));
            graphics.draw(new Line2D.Double(RIGHT, LIP, RIGHT, FOOT));
        } finally {
            graphics.dispose();
        }
    }

    private void inside(Graphics2D graphics) {
        double top = switch (look) {
            case NONE -> FOOT - 4;
            case LOW_IN_NECK -> FOOT - 14;
            default -> LIP;
        };
        boolean water = look == FoamLookWord.NONE || look == FoamLookWord.STREAMING;
        Rectangle2D body = new Rectangle2D.Double(LEFT, top, RIGHT - LEFT, FOOT - top);
        graphics.setColor(water ? palette.water() : palette.foam());
        graphics.fill(body);
        cells(graphics, body);
    }

    private double cell() {
        return switch (look) {
            case LOW_IN_NECK -> 6;
            case STIFF -> 8.5;
            case CREAMY -> 4.6;
            case RUNNY -> 3.6;
            default -> 3;
        };
    }

    private void cells(Graphics2D graphics, Shape within) {
        if (look == FoamLookWord.NONE) {
            return;
        }
        Graphics2D inside = (Graphics2D) graphics.create();
        try {
            inside.clip(within);
            inside.setColor(palette.foamLine());
            inside.setStroke(new BasicStroke(0.9f));
            Random random = new Random(3);
            Rectangle2D box = within.getBounds2D();
            double size = cell();
            double gap = look == FoamLookWord.STREAMING ? 2.6 : look == FoamLookWord.RUNNY ? 1.25 : 0.92;
            for (double y = box.getMinY(); y < box.getMaxY(); y += size * gap) {
                for (double x = box.getMinX() - size * random.nextDouble(); x < box.getMaxX(); x += size * gap) {
                    double d = size * (0.85 + 0.3 * random.nextDouble());
                    inside.draw(new Ellipse2D.Double(x, y, d, d));
                }
            }
        } finally {
            inside.dispose();
        }
    }

    private void over(Graphics2D graphics) {
        double middle = (LEFT + RIGHT) / 2;
        Path2D shape = new Path2D.Double();
        Color colour = palette.foam();
        switch (look) {
            case STIFF -> {
                shape.append(new Ellipse2D.Double(middle - 11, LIP - 9, 12, 10), false);
                shape.append(new Ellipse2D.Double(middle + 1, LIP - 6, 9, 7), false);
                shape.append(new Ellipse2D.Double(LEFT - 9, LIP + 4, 6, 5), false);
            }
            case CREAMY -> {
                shape.moveTo(LEFT - 4, LIP + 8);
                shape.quadTo(LEFT - 6, LIP - 3, middle, LIP - 8);
                shape.quadTo(RIGHT + 6, LIP - 3, RIGHT + 4, LIP + 8);
                shape.lineTo(RIGHT, LIP);
                shape.lineTo(LEFT, LIP);
                shape.closePath();
            }
            case RUNNY, STREAMING -> {
                double thick = look == FoamLookWord.RUNNY ? 5 : 8;
                colour = look == FoamLookWord.RUNNY ? palette.foam() : palette.water();
                shape.moveTo(LEFT - thick, FOOT);
                shape.quadTo(LEFT - thick - 1, LIP - 6, middle, LIP - 6);
                shape.quadTo(RIGHT + thick + 1, LIP - 6, RIGHT + thick, FOOT);
                shape.lineTo(RIGHT, FOOT);
                shape.lineTo(RIGHT, LIP);
                shape.lineTo(LEFT, LIP);
                shape.lineTo(LEFT, FOOT);
                shape.closePath();
            }
            default -> {
                return;
            }
        }
        graphics.setColor(colour);
        graphics.fill(shape);
        cells(graphics, shape);
        graphics.setColor(palette.foamLine());
        graphics.setStroke(new BasicStroke(1));
        graphics.draw(shape);
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
