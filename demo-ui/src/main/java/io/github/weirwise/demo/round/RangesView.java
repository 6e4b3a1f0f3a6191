package io.github.weirwise.demo.round;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Drawn;
import io.github.weirwise.demo.panel.Standing;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.UIManager;

/** Ranges of one number under each other on one rule, such as what was known of a unit before, and what is known now. */
final class RangesView extends Drawn {
    private static final long serialVersionUID = 1L;
    private static final int ROW_PX = 40;
    private static final int EDGE = 6;

    private final String nameKey;
    private transient Dress dress;
    private transient List<Row> rows = List.of();

    /** A range with what it is called; factors, over 0. */
    record Row(String name, Range factor) {}

    RangesView(String nameKey, Dress dress) {
        super(nameKey, new Dimension(160, ROW_PX), new Dimension(300, ROW_PX));
        this.nameKey = nameKey;
        this.dress = dress;
    }

    /** Shows these. */
    void show(List<Row> others) {
        if (!others.equals(rows)) {
            change(() -> rows = List.copyOf(others));
            setPreferredSize(new Dimension(300, ROW_PX * Math.max(1, rows.size())));
            setMinimumSize(new Dimension(160, ROW_PX * Math.max(1, rows.size())));
            revalidate();
        }
    }

    void dress(Dress other) {
        dress = other;
        repaint();
    }

    @Override
    protected String title() {
        return dress.text(nameKey);
    }

    @Override
    public String describe() {
        return rows.stream().map(this::words).collect(Collectors.joining(" "));
    }

    private String words(Row row) {
        return dress.text("learn.range", row.name(), QuantityRange.of(row.factor(), Unit.PLAIN));
    }

    @Override
    protected void draw(Graphics2D g) {
        double low = rows.stream().mapToDouble(row -> row.factor().low()).min().orElse(1);
        double high =
                rows.stream().mapToDouble(row -> row.factor().high()).max().orElse(2);
        double span = Math.max(1e-6, Math.log(high / low));
        Font plain = UIManager.getFont("Label.font");
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            g.setFont(Standing.COMPUTED.font(plain));
            g.setColor(Standing.COMPUTED.colour(dress.palette()));
            FontMetrics metrics = g.getFontMetrics();
            g.drawString(words(row), EDGE, i * ROW_PX + metrics.getAscent() + 2);
            double y = i * ROW_PX + metrics.getHeight() + 8.0;
            double from = EDGE + Math.log(row.factor().low() / low) / span * (getWidth() - 2 * EDGE);
            double to = EDGE + Math.log(row.factor().high() / low) / span * (getWidth() - 2 * EDGE);
            g.setColor(dress.palette().accent());
            g.setStroke(new BasicStroke(3));
            g.draw(new Line2D.Double(from, y, to, y));
            g.setStroke(new BasicStroke(2));
            g.draw(new Line2D.Double(from, y - 5, from, y + 5));
            g.draw(new Line2D.Double(to, y - 5, to, y + 5));
        }
    }
}
