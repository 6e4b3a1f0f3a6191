package io.github.weirwise.demo.round;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Standing;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.OptionalDouble;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.UIManager;

/** One range that was forecast, and on the same rule what came of it. */
final class RangeBar extends JComponent {
    private static final long serialVersionUID = 1L;
    private static final int HEIGHT = 76;
    private static final int RULE_Y = 48;
    private static final int EDGE = 8;

    private final String nameKey;
    private final Unit unit;
    private transient Dress dress;
    private transient Range expected = new Range(0, 1);
    private transient OptionalDouble came = OptionalDouble.empty();
    private Standing standing = Standing.READ;

    RangeBar(String nameKey, Unit unit, Dress dress) {
        this.nameKey = nameKey;
        this.unit = unit;
        this.dress = dress;
        setName(nameKey);
        setPreferredSize(new Dimension(200, HEIGHT));
        setMinimumSize(new Dimension(120, HEIGHT));
    }

    /** Shows what was expected and what came, as read or as a draft. */
    void show(Range range, OptionalDouble value, Standing as) {
        if (!range.equals(expected) || !value.equals(came) || as != standing) {
            String before = describe();
            expected = range;
            came = value;
            standing = as;
            if (accessibleContext != null) {
                accessibleContext.firePropertyChange(
                        AccessibleContext.ACCESSIBLE_DESCRIPTION_PROPERTY, before, describe());
            }
            repaint();
        }
    }

    void dress(Dress other) {
        dress = other;
        repaint();
    }

    private String verdict() {
        if (came.isEmpty()) {
            return dress.text("expected.open");
        }
        double value = came.getAsDouble();
        String key = value < expected.low() ? "below" : value > expected.high() ? "above" : "within";
        return dress.text("expected." + key);
    }

    /** The same in words. */
    String describe() {
        String range = dress.words().say(expected, unit);
        return came.isEmpty()
                ? dress.text("expected.describe.open", dress.text(nameKey), range)
                : dress.text(
                        "expected.describe",
                        dress.text(nameKey),
                        range,
                        dress.words().say(came.getAsDouble(), unit),
                        verdict());
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D graphics = (Graphics2D) g.create();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            paintRule(graphics);
        } finally {
            graphics.dispose();
        }
    }

    private double x(double value) {
        double margin = Math.max(expected.width(), 1e-6);
        double low = expected.low() - 0.8 * margin;
        double share = (value - low) / (2.6 * margin);
        return EDGE + Math.max(0, Math.min(1, share)) * (getWidth() - 2 * EDGE);
    }

    private void paintRule(Graphics2D graphics) {
        Font plain = UIManager.getFont("Label.font");
        var palette = dress.palette();
        graphics.setFont(plain);
        graphics.setColor(palette.ink());
        graphics.drawString(dress.text(nameKey), 0, graphics.getFontMetrics().getAscent());
        graphics.setColor(palette.muted());
        graphics.draw(new Line2D.Double(EDGE, RULE_Y, getWidth() - EDGE, RULE_Y));
        Rectangle2D band =
                new Rectangle2D.Double(x(expected.low()), RULE_Y - 7, x(expected.high()) - x(expected.low()), 14);
        graphics.setStroke(
                new BasicStroke(1.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {4, 3}, 0));
        graphics.draw(band);
        graphics.setFont(Standing.COMPUTED.font(plain));
        String range = dress.text("expected.range", dress.words().say(expected, unit));
        int below = RULE_Y + 9 + graphics.getFontMetrics().getAscent();
        graphics.drawString(
                range,
                (int) Math.min(
                        band.getX(),
                        Math.max(0, getWidth() - graphics.getFontMetrics().stringWidth(range) - 2)),
                below);
        came.ifPresent(value -> {
            graphics.setColor(standing.colour(palette));
            graphics.setFont(standing.font(plain));
            graphics.setStroke(new BasicStroke(2));
            double at = x(value);
            Ellipse2D dot = new Ellipse2D.Double(at - 5, RULE_Y - 5, 10, 10);
            if (standing == Standing.READ) {
                graphics.fill(dot);
            } else {
                graphics.draw(dot);
            }
            String words = dress.text(
                    standing == Standing.READ ? "expected.came" : "expected.typed",
                    dress.words().say(value, unit),
                    verdict());
            FontMetrics metrics = graphics.getFontMetrics();
            int width = metrics.stringWidth(words);
            graphics.drawString(
                    words,
                    (int) Math.max(0, Math.min(at - width / 2.0, getWidth() - width - 2)),
                    2 * metrics.getHeight() - metrics.getDescent());
        });
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.CANVAS;
                }

                @Override
                public String getAccessibleName() {
                    return dress.text(nameKey);
                }

                @Override
                public String getAccessibleDescription() {
                    return describe();
                }
            };
        }
        return accessibleContext;
    }
}
