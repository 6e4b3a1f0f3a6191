package io.github.weirwise.demo.round;

import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.SkimmateColour;
import io.github.weirwise.demo.panel.Drawn;
import io.github.weirwise.demo.panel.Standing;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.UIManager;

/**
 * This unit, with where the ruler goes and what the cup's interval is. What was read stands in it with its age, what is computed
 * is called so, what is wanted is a band; of what nobody read nothing is drawn.
 */
public final class ReadSketch extends Drawn {
    private static final long serialVersionUID = 1L;
    private static final int EDGE = 10;
    private static final int ROOM_BELOW = 46;
    private static final double HALF_BAND_MM = 4;

    private final transient Desk desk;
    private transient Dress dress;

    /** The sketch of a desk's unit. */
    public ReadSketch(Desk desk, Dress dress) {
        super("sketch", new Dimension(300, 320), new Dimension(480, 520));
        this.desk = desk;
        this.dress = dress;
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        repaint();
    }

    @Override
    public String describe() {
        List<String> parts = new ArrayList<>();
        parts.add(words(desk.newest(Observation.FunnelLevel.class), "sketch.level.never"));
        parts.add(words(desk.newest(Observation.CupVolume.class), "sketch.cup.never"));
        parts.add(crest());
        parts.add(dress.text("sketch.target", Quantity.of(desk.unit().target().submergenceMm(), Unit.MILLIMETRE)));
        return String.join(" ", parts);
    }

    private String words(Optional<? extends Desk.Seen<?>> seen, String never) {
        return seen.map(each -> dress.text(
                        "sketch.seen",
                        io.github.weirwise.diagnosis.ObservationWords.of(each.what()),
                        Ages.since(each.at(), desk.now())))
                .orElseGet(() -> dress.text(never));
    }

    private String crest() {
        Quantity crest = Quantity.of(desk.settings().weirCrestMm(), Unit.MILLIMETRE);
        return desk.journal()
                .last(WeirMove.class)
                .map(move -> dress.text("sketch.crest", crest, Ages.since(move.at(), desk.now())))
                .orElseGet(() -> dress.text("sketch.crest.start", crest));
    }

    @Override
    protected String title() {
        return dress.text("sketch.name");
    }

    @Override
    protected void draw(Graphics2D graphics) {
        Rectangle2D area = new Rectangle2D.Double(
                EDGE + getWidth() * 0.2,
                EDGE,
                getWidth() * 0.6 - 2 * EDGE,
                Math.max(60, getHeight() - 2.0 * EDGE - ROOM_BELOW));
        UnitSketch sketch = new UnitSketch(desk.unit(), desk.settings().weirCrestMm(), area);
        boolean read = desk.newest(Observation.FunnelLevel.class).isPresent();
        cup(graphics, sketch);
        sketch.paint(graphics, dress.palette(), read);
        band(graphics, sketch);
        level(graphics, sketch);
        ruler(graphics, sketch);
        weir(graphics, sketch);
    }

    private Font plain() {
        return UIManager.getFont("Label.font");
    }

    private double base() {
        return desk.unit().column().funnelBaseMm();
    }

    private void band(Graphics2D g, UnitSketch sketch) {
        Palette palette = dress.palette();
        Range band = Range.around(desk.unit().target().submergenceMm(), HALF_BAND_MM);
        double top = sketch.view().y(base() + band.high());
        double bottom = sketch.view().y(base() + band.low());
        Rectangle2D box = new Rectangle2D.Double(
                sketch.columnLeftPx(), top, sketch.columnRightPx() - sketch.columnLeftPx(), bottom - top);
        g.setColor(Palette.fade(palette.good(), 50));
        g.fill(box);
        g.setColor(palette.good());
        g.setStroke(new BasicStroke(1));
        g.draw(box);
        String words =
                dress.text("sketch.target", Quantity.of(desk.unit().target().submergenceMm(), Unit.MILLIMETRE));
        right(g, List.of(words), sketch.weirPx() + 14, (top + bottom) / 2, Standing.WANTED);
    }

    private void level(Graphics2D g, UnitSketch sketch) {
        desk.newest(Observation.FunnelLevel.class).ifPresent(seen -> {
            double y = sketch.view().y(base() + seen.what().mm());
            g.setColor(dress.palette().ink());
            g.setStroke(new BasicStroke(2.6f));
            g.draw(new Line2D.Double(sketch.columnLeftPx() - 26, y, sketch.columnRightPx(), y));
        });
    }

    /** The ruler stands with its zero at the funnel base, outside on the column. */
    private void ruler(Graphics2D g, UnitSketch sketch) {
        Palette palette = dress.palette();
        double x = sketch.columnLeftPx() - 20;
        double top = sketch.view().y(base() + 60);
        double foot = sketch.view().y(base() - 20);
        Rectangle2D body = new Rectangle2D.Double(x - 7, top, 14, foot - top);
        g.setColor(palette.paper());
        g.fill(body);
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(1.2f));
        g.draw(body);
        for (int mm = -20; mm <= 60; mm += 5) {
            double y = sketch.view().y(base() + mm);
            double long10 = mm % 10 == 0 ? 8 : 4;
            g.draw(new Line2D.Double(x + 7 - long10, y, x + 7, y));
        }
        List<String> lines = new ArrayList<>();
        Optional<Desk.Seen<Observation.FunnelLevel>> seen = desk.newest(Observation.FunnelLevel.class);
        lines.add(seen.map(each -> dress.words().say(each.what().mm(), Unit.MILLIMETRE))
                .orElseGet(() -> dress.text("sketch.notRead")));
        lines.add(seen.map(each -> dress.text("sketch.read", Ages.since(each.at(), desk.now())))
                .orElse(""));
        double y = sketch.view().y(base() + seen.map(each -> each.what().mm()).orElse(20.0));
        left(g, lines, x - 14, y, seen.isPresent() ? Standing.READ : Standing.COMPUTED);
        left(
                g,
                List.of(dress.text("sketch.zero")),
                Math.min(x - 14, sketch.wallPx() - 8),
                Math.max(y + 52, sketch.view().y(base())),
                Standing.WANTED);
    }

    private void cup(Graphics2D g, UnitSketch sketch) {
        Palette palette = dress.palette();
        Rectangle2D cup = sketch.cup();
        Optional<Desk.Seen<Observation.CupVolume>> seen = desk.newest(Observation.CupVolume.class);
        Optional<Color> colour = desk.newestColour().map(each -> SkimmateColour.of(each.what()));
        seen.ifPresent(each -> {
            double share = Math.min(1, each.what().ml() / desk.unit().cupMl());
            g.setColor(colour.orElse(palette.rule()));
            g.fill(new Rectangle2D.Double(
                    cup.getX(), cup.getMaxY() - share * cup.getHeight(), cup.getWidth(), share * cup.getHeight()));
        });
        List<String> lines = new ArrayList<>();
        lines.add(seen.map(each -> dress.words().say(each.what().ml(), Unit.MILLILITRE))
                .orElseGet(() -> dress.text("sketch.notRead")));
        seen.ifPresent(each -> {
            lines.add(dress.text("sketch.in", Quantity.of(each.what().hours(), Unit.HOUR)));
            lines.add(dress.text("sketch.read", Ages.since(each.at(), desk.now())));
        });
        right(g, lines, cup.getMaxX() + 8, cup.getCenterY(), seen.isPresent() ? Standing.READ : Standing.COMPUTED);
        interval(g, seen);
    }

    /** The cup's interval as a line from when it was emptied to now. */
    private void interval(Graphics2D g, Optional<Desk.Seen<Observation.CupVolume>> seen) {
        Palette palette = dress.palette();
        double y = getHeight() - ROOM_BELOW + 12.0;
        double from = EDGE + 6.0;
        double to = getWidth() - EDGE - 6.0;
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(1.6f));
        g.draw(new Line2D.Double(from, y, to, y));
        g.draw(new Line2D.Double(from, y - 6, from, y + 6));
        g.draw(new Line2D.Double(to, y - 6, to, y + 6));
        g.setFont(plain());
        FontMetrics metrics = g.getFontMetrics();
        float below = (float) (y + 8 + metrics.getAscent());
        String emptied = seen.map(
                        each -> dress.text("sketch.emptied", desk.clock().when(each.at())))
                .orElseGet(() -> dress.text("sketch.emptied.never"));
        g.drawString(emptied, (float) from, below);
        String now = dress.text("sketch.now");
        g.drawString(now, (float) (to - metrics.stringWidth(now)), below);
    }

    private void weir(Graphics2D g, UnitSketch sketch) {
        List<String> lines =
                List.of(dress.words().say(desk.settings().weirCrestMm(), Unit.MILLIMETRE), dress.text("sketch.mark"));
        right(g, lines, sketch.weirPx() + 14, sketch.view().y(desk.settings().weirCrestMm()) + 34, Standing.READ);
    }

    private void left(Graphics2D g, List<String> lines, double x, double y, Standing as) {
        block(g, lines, x, y, as, true);
    }

    private void right(Graphics2D g, List<String> lines, double x, double y, Standing as) {
        block(g, lines, x, y, as, false);
    }

    /** Lines under each other, broken where the picture ends. */
    private void block(Graphics2D g, List<String> given, double x, double y, Standing as, boolean toLeft) {
        double row = y - 8;
        for (int i = 0; i < given.size(); i++) {
            Font font = i == 0
                    ? as.font(plain().deriveFont(plain().getSize2D() * (as == Standing.READ ? 1.3f : 1)))
                    : plain();
            g.setFont(font);
            g.setColor(i == 0 ? as.colour(dress.palette()) : dress.palette().muted());
            FontMetrics metrics = g.getFontMetrics();
            double room = toLeft ? x - 2 : getWidth() - x - 2;
            for (String line : io.github.weirwise.demo.panel.WrappedLine.broken(given.get(i), metrics, (int) room)) {
                double at = toLeft ? x - metrics.stringWidth(line) : x;
                g.drawString(line, (float) Math.max(2, at), (float) row + metrics.getAscent() * 0.5f);
                row += metrics.getHeight();
            }
        }
    }
}
