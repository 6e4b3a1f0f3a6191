package io.github.weirwise.demo.start;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Drawn;
import io.github.weirwise.demo.round.UnitSketch;
import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.SkimmerUnit;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javax.swing.SwingUtilities;

/** A unit in section with a dimension line for every measure, each led out to the box in which it is typed. */
final class UnitDrawing extends Drawn {
    private static final long serialVersionUID = 1L;
    private static final double CREST_MM = 195;
    private static final Set<UnitMeasure> AT_THEIR_TOP =
            EnumSet.of(UnitMeasure.WEIR_HIGH, UnitMeasure.CREST, UnitMeasure.WEIR_LOW);

    private final transient Dress dress;
    private final transient Function<UnitMeasure, ? extends Component> boxes;
    private transient Optional<UnitMeasure> pointed = Optional.empty();

    UnitDrawing(Dress dress, Function<UnitMeasure, ? extends Component> boxes) {
        super("form.drawing", new Dimension(200, 300), new Dimension(330, 430));
        this.dress = dress;
        this.boxes = boxes;
    }

    /** Shows which line belongs to the box that is typed in. */
    void point(Optional<UnitMeasure> measure) {
        pointed = measure;
        repaint();
    }

    @Override
    protected String title() {
        return dress.text("form.drawing");
    }

    /** Its lines are told by the names of their boxes. */
    @Override
    public String describe() {
        return dress.text("form.about");
    }

    @Override
    protected void draw(Graphics2D graphics) {
        Rectangle2D area = new Rectangle2D.Double(26, 12, getWidth() - 52.0, Math.max(80, getHeight() - 24.0));
        SkimmerUnit shown = LanternQuay.jetty();
        UnitSketch sketch = new UnitSketch(shown, CREST_MM, area);
        sketch.paint(graphics, dress.palette(), true);
        for (UnitMeasure each : UnitMeasure.values()) {
            dimension(graphics, line(each, sketch, shown), each);
        }
    }

    private void dimension(Graphics2D g, Line2D line, UnitMeasure measure) {
        boolean here = pointed.filter(measure::equals).isPresent();
        g.setColor(here ? dress.palette().accent() : dress.palette().muted());
        g.setStroke(new BasicStroke(here ? 3 : 1.2f));
        g.draw(line);
        end(g, line.getX1(), line.getY1(), line);
        end(g, line.getX2(), line.getY2(), line);
        Component box = boxes.apply(measure);
        Point corner = SwingUtilities.convertPoint(box, 0, box.getHeight() / 2, this);
        double to = corner.x < getWidth() / 2 ? 0 : getWidth();
        // From the top of a height, so that the weir's three part from each other.
        boolean high = AT_THEIR_TOP.contains(measure);
        double middleX = (line.getX1() + line.getX2()) / 2;
        double middleY = high ? line.getY2() : (line.getY1() + line.getY2()) / 2;
        g.setStroke(new BasicStroke(
                here ? 1.6f : 0.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {2, 3}, 0));
        g.draw(new Line2D.Double(middleX, middleY, to, corner.y));
    }

    /** A short stroke across the end of a dimension line. */
    private static void end(Graphics2D g, double x, double y, Line2D of) {
        boolean upright = Math.abs(of.getX1() - of.getX2()) < 1;
        g.draw(upright ? new Line2D.Double(x - 4, y, x + 4, y) : new Line2D.Double(x, y - 4, x, y + 4));
    }

    private static Line2D line(UnitMeasure measure, UnitSketch sketch, SkimmerUnit shown) {
        Column column = shown.column();
        double base = column.funnelBaseMm();
        double top = base + column.funnelHeightMm();
        double neck = sketch.view().length(column.neckBoreMm() / 2);
        double axis = sketch.axisPx();
        double left = sketch.columnLeftPx();
        double weir = sketch.weirPx();
        return switch (measure) {
            case BORE -> across(sketch, left, sketch.columnRightPx(), base * 0.75);
            case OPENING -> upright(sketch, axis - 14, 0, column.openingMm());
            case FUNNEL_BASE -> upright(sketch, left - 9, 0, base);
            case FUNNEL_HEIGHT -> upright(sketch, left - 4, base, top);
            case NECK_BORE -> across(sketch, axis - neck, axis + neck, column.lipMm() - 30);
            case NECK_HEIGHT -> upright(sketch, axis - neck - 10, top, column.lipMm());
            case WEIR_WIDTH -> across(sketch, weir - 6, weir + 6, CREST_MM - 80);
            case WEIR_LOW -> upright(sketch, weir + 7, 0, CREST_MM - 60);
            case WEIR_HIGH -> upright(sketch, weir + 23, 0, CREST_MM + 40);
            case CREST -> upright(sketch, weir + 15, 0, CREST_MM);
            case CUP -> across(sketch, sketch.cup().getX(), sketch.cup().getMaxX(), column.lipMm() + 14);
            case WANTED_AMOUNT -> across(sketch, sketch.cup().getX(), axis - neck - 14, column.lipMm() - 10);
            case WANTED_LEVEL ->
                upright(sketch, axis, base, base + shown.target().submergenceMm());
            case FLOW -> across(sketch, weir - 20, weir - 10, 84);
            case AIR -> across(sketch, axis - 6, axis + 6, column.openingMm() + 34);
            case CELSIUS -> across(sketch, weir - 20, weir - 10, 52);
            case SALINITY -> across(sketch, weir - 20, weir - 10, 24);
        };
    }

    private static Line2D across(UnitSketch sketch, double fromPx, double toPx, double atMm) {
        return new Line2D.Double(
                fromPx, sketch.view().y(atMm), toPx, sketch.view().y(atMm));
    }

    private static Line2D upright(UnitSketch sketch, double atPx, double fromMm, double toMm) {
        return new Line2D.Double(
                atPx, sketch.view().y(fromMm), atPx, sketch.view().y(toMm));
    }
}
