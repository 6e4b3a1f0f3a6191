package io.github.weirwise.demo.start;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Drawn;
import io.github.weirwise.demo.panel.MeasureBoxes;
import io.github.weirwise.demo.round.UnitSketch;
import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.SkimmerUnit;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.JPanel;

/** A unit in section with a dimension line for every length, and on each line the box in which it is typed. */
final class UnitDrawing extends Drawn {
    private static final long serialVersionUID = 1L;
    /** Names and faults of these have room beside the box; the others' boxes fill their place, so that the line meets them. */
    private static final Set<UnitMeasure> AT_RIGHT = EnumSet.of(
            UnitMeasure.NECK_BORE,
            UnitMeasure.WEIR_HIGH,
            UnitMeasure.WANTED_LEVEL,
            UnitMeasure.CREST,
            UnitMeasure.WEIR_LOW,
            UnitMeasure.WEIR_WIDTH);

    private static final double LOWEST_MM = 130;
    private static final double CREST_MM = 190;
    private static final double HIGHEST_MM = 315;
    /** Heights that follow one on another are a chain, with its boxes on it. */
    private static final int CHAIN_PX = 78;

    private static final int SECOND_PX = 166;
    private static final int BOX_PX = 156;
    private static final int RIGHT_PX = 290;
    private static final int NONE_PX = 10;

    private final transient Dress dress;
    private final transient Map<UnitMeasure, JPanel> boxes = new EnumMap<>(UnitMeasure.class);
    private transient Optional<UnitMeasure> pointed = Optional.empty();

    /**
     * A length in the drawing.
     *
     * @param line its dimension line
     * @param boxPx left end of its box
     * @param widthPx room for its box and name
     * @param yPx height at which the box joins the line
     */
    private record Spot(Line2D line, double boxPx, double widthPx, double yPx) {
        /** From the dimension line to the box; of no length where the box lies on the line. */
        Line2D join() {
            boolean left = boxPx + widthPx / 2 < line.getX1();
            double from = left ? Math.min(line.getX1(), line.getX2()) : Math.max(line.getX1(), line.getX2());
            double to = left ? Math.min(from, boxPx + widthPx) : Math.max(from, boxPx);
            return new Line2D.Double(from, yPx, to, yPx);
        }
    }

    UnitDrawing(MeasureBoxes<UnitMeasure> measures, Dress dress) {
        super("form.drawing", new Dimension(700, 420), new Dimension(884, 440));
        this.dress = dress;
        for (UnitMeasure each : UnitMeasure.values()) {
            if (each.isLength()) {
                JPanel box = measures.make(each, !AT_RIGHT.contains(each));
                // Lines run behind it.
                box.setOpaque(true);
                boxes.put(each, box);
                add(box);
                measures.box(each).field().addFocusListener(new FocusAdapter() {
                    @Override
                    public void focusGained(FocusEvent e) {
                        pointed = Optional.of(each);
                        repaint();
                    }
                });
            }
        }
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

    private UnitSketch sketch() {
        double left = SECOND_PX + BOX_PX + 2.0 * NONE_PX;
        return new UnitSketch(
                LanternQuay.jetty(),
                CREST_MM,
                new Rectangle2D.Double(
                        left, 4, getWidth() - left - RIGHT_PX - 2 * NONE_PX, Math.max(80, getHeight() - 18.0)));
    }

    /** A box lies with its middle at its line; what is told over it grows upwards. */
    @Override
    public void doLayout() {
        UnitSketch sketch = sketch();
        boxes.forEach((each, box) -> {
            Spot spot = spot(each, sketch);
            box.setSize((int) spot.widthPx(), getHeight());
            box.doLayout();
            int height = box.getPreferredSize().height;
            Component row = box.getComponent(1);
            double top = spot.yPx() + row.getPreferredSize().height / 2.0 - height;
            box.setBounds(
                    (int) spot.boxPx(),
                    (int) Math.max(0, Math.min(getHeight() - height, top)),
                    (int) spot.widthPx(),
                    height);
        });
    }

    @Override
    protected void draw(Graphics2D graphics) {
        UnitSketch sketch = sketch();
        sketch.paint(graphics, dress.palette(), true);
        Column column = LanternQuay.jetty().column();
        double neck = sketch.axisPx() - sketch.view().length(column.neckBoreMm() / 2);
        double base = column.funnelBaseMm();
        graphics.setColor(dress.palette().rule());
        graphics.setStroke(new BasicStroke(1));
        double[][] witnesses = {
            {0, sketch.wallPx()},
            {base, sketch.columnLeftPx()},
            {base + column.funnelHeightMm(), neck},
            {column.lipMm(), neck}
        };
        for (double[] each : witnesses) {
            double y = sketch.view().y(each[0]);
            graphics.draw(new Line2D.Double(CHAIN_PX - 5, y, each[1], y));
        }
        boxes.keySet().stream()
                .filter(each -> !pointed.equals(Optional.of(each)))
                .forEach(each -> dimension(graphics, spot(each, sketch), false));
        pointed.ifPresent(each -> dimension(graphics, spot(each, sketch), true));
    }

    private void dimension(Graphics2D g, Spot spot, boolean here) {
        Line2D line = spot.line();
        g.setColor(here ? dress.palette().accent() : dress.palette().muted());
        g.setStroke(new BasicStroke(here ? 2.6f : 1.2f));
        g.draw(line);
        end(g, line.getX1(), line.getY1(), line);
        end(g, line.getX2(), line.getY2(), line);
        g.draw(spot.join());
    }

    /** A short stroke across the end of a dimension line. */
    private static void end(Graphics2D g, double x, double y, Line2D of) {
        boolean upright = Math.abs(of.getX1() - of.getX2()) < 1;
        g.draw(upright ? new Line2D.Double(x - 4, y, x + 4, y) : new Line2D.Double(x, y - 4, x, y + 4));
    }

    private Spot spot(UnitMeasure measure, UnitSketch sketch) {
        SkimmerUnit shown = LanternQuay.jetty();
        Column column = shown.column();
        double base = column.funnelBaseMm();
        double top = base + column.funnelHeightMm();
        double lip = column.lipMm();
        double neck = sketch.view().length(column.neckBoreMm() / 2);
        double axis = sketch.axisPx();
        double weir = sketch.weirPx();
        return switch (measure) {
            case FUNNEL_BASE -> chain(sketch, 0, base);
            case FUNNEL_HEIGHT -> chain(sketch, base, top);
            case NECK_HEIGHT -> chain(sketch, top, lip);
            case CUP -> second(across(sketch, sketch.cup().getX(), sketch.cup().getMaxX(), lip + 14));
            case BORE -> second(across(sketch, sketch.columnLeftPx(), sketch.columnRightPx(), 0.6 * base));
            case OPENING -> second(upright(sketch, sketch.columnLeftPx() + 12, 0, column.openingMm()));
            case NECK_BORE -> right(across(sketch, axis - neck, axis + neck, lip - 34));
            case WANTED_LEVEL ->
                right(upright(
                        sketch,
                        sketch.columnRightPx() + 12,
                        base,
                        base + shown.target().submergenceMm()));
            case WEIR_HIGH -> atTop(upright(sketch, weir + 29, 0, HIGHEST_MM));
            case CREST -> atTop(upright(sketch, weir + 19, 0, CREST_MM));
            case WEIR_LOW -> atTop(upright(sketch, weir + 9, 0, LOWEST_MM));
            case WEIR_WIDTH -> right(across(sketch, weir - 6, weir + 4, 55));
            default -> throw new IllegalArgumentException(measure + " is no length");
        };
    }

    private static Spot chain(UnitSketch sketch, double fromMm, double toMm) {
        Line2D line = upright(sketch, CHAIN_PX, fromMm, toMm);
        return new Spot(line, 0, BOX_PX, (line.getY1() + line.getY2()) / 2);
    }

    private static Spot second(Line2D line) {
        return new Spot(line, SECOND_PX, BOX_PX, (line.getY1() + line.getY2()) / 2);
    }

    private Spot right(Line2D line) {
        return new Spot(line, getWidth() - RIGHT_PX, RIGHT_PX, (line.getY1() + line.getY2()) / 2);
    }

    /** From the top of a height, so that the weir's three part from each other. */
    private Spot atTop(Line2D line) {
        return new Spot(line, getWidth() - RIGHT_PX, RIGHT_PX, line.getY2());
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
