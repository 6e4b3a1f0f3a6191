package io.github.weirwise.demo.panel;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import javax.swing.Icon;

/** An icon that is painted once for each scale of the screen and then only copied. */
public final class PaintedOnce implements Icon {
    private final Icon icon;
    private BufferedImage image;
    private double scale;

    public PaintedOnce(Icon icon) {
        this.icon = icon;
    }

    @Override
    public void paintIcon(Component component, Graphics g, int x, int y) {
        Graphics2D graphics = (Graphics2D) g.create();
        try {
            double wanted = Math.max(0.1, graphics.getTransform().getScaleX());
            if (image == null || scale != wanted) {
                scale = wanted;
                image = painted(component);
            }
            graphics.translate(x, y);
            graphics.scale(1 / scale, 1 / scale);
            graphics.drawImage(image, 0, 0, null);
        } finally {
            graphics.dispose();
        }
    }

    private BufferedImage painted(Component component) {
        BufferedImage made = new BufferedImage(
                (int) Math.ceil(icon.getIconWidth() * scale),
                (int) Math.ceil(icon.getIconHeight() * scale),
                BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D graphics = made.createGraphics();
        try {
            graphics.scale(scale, scale);
            icon.paintIcon(component, graphics, 0, 0);
        } finally {
            graphics.dispose();
        }
        return made;
    }

    @Override
    public int getIconWidth() {
        return icon.getIconWidth();
    }

    @Override
    public int getIconHeight() {
        return icon.getIconHeight();
    }
}
