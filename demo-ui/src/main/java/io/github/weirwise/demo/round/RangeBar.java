package io.github.weirwise.demo.round;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Drawn;
import io.github.weirwise.demo.panel.Standing;
import io.github.weirwise.demo.panel.WrappedLine;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.OptionalDouble;
import javax.swing.UIManager;

/** One range that was forecast, and on the same rule what came of it. */
final class RangeBar extends Drawn {
    private static final long serialVersionUID = 1L;
    private static final int HEIGHT = 94;
    private static final int RULE_Y = 66;
    private static final int EDGE = 8;

    private final String nameKey;
    private final Unit unit;
    private transient Dress dress;
    private transient Range expected = new Range(0, 1);
    private transient OptionalDouble came = OptionalDouble.empty();
    private Standing standing = Standing.READ;

    RangeBar(String nameKey, Unit unit, Dress dress) {
        super(nameKey, new Dimension(120, HEIGHT), new Dimension(200, HEIGHT));
        this.nameKey = nameKey;
        this.unit = unit;
        this.dress = dress;
    }

    /** Shows what was expected and what came, as read or as a draft. */
    void show(Range range, OptionalDouble value, Standing as) {
        if (!range.equals(expected) || !value.equals(came) || as != standing) {
            change(() -> {
                expected = range;
                came = value;
                standing = as;
            });
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

    @Override
    public String describe() {
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
    protected String title() {
        return dress.text(nameKey);
    }

    private double x(double value) {
        double margin = Math.max(expected.width(), 1e-6);
        double low = expected.low() - 0.8 * margin;
        double share = (value - low) / (2.6 * margin);
        return EDGE + Math.max(0, Math.min(1, share)) * (getWidth() - 2 * EDGE);
    }

    @Override
    protected void draw(Graphics2D graphics) {
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
        if (came.isEmpty()) {
            graphics.setFont(plain);
            graphics.drawString(
                    verdict(),
                    0,
                    2 * graphics.getFontMetrics().getHeight()
                            - graphics.getFontMetrics().getDescent());
        }
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
            int row = metrics.getHeight();
            for (String line : WrappedLine.broken(words, metrics, getWidth() - 2)) {
                row += metrics.getHeight();
                graphics.drawString(line, 0, row - metrics.getDescent());
            }
        });
    }
}
