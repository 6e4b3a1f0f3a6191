package io.github.weirwise.demo.picture;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The names of the parts, each beside or on its part, and how it all hangs together in one sentence. */
final class NamePainter extends Painter {
    /** The air line's name ends here, at the line. */
    private static final double AIR_LINE_MM = 43;

    private final Font font;
    private final List<Rectangle2D> taken = new ArrayList<>();

    NamePainter(Brush brush) {
        super(brush);
        font = brush.font().deriveFont(Font.ITALIC, brush.font().getSize2D() * 0.86f);
    }

    /** A name at a point of the drawing: -1 ends there, 0 is centred on it, 1 begins there, with a line from the part when it stands off. */
    private record Name(String key, double xMm, double zMm, int side, double partXMm) {
        static Name on(String key, double x, double z) {
            return new Name(key, x, z, 0, Double.NaN);
        }
    }

    void paint(Ink ink, Scene scene) {
        double last = section.axesMm.get(section.axesMm.size() - 1);
        double base = section.column().funnelBaseMm();
        double funnelTop = base + section.column().funnelHeightMm();
        double neck = section.radiusAt(section.lipMm());
        double midFunnel = base + 0.6 * section.column().funnelHeightMm();
        double midNeck = (funnelTop + section.cupFloorMm) / 2;
        double padMiddle = (section.beyondLeftMm + section.beyondRightMm - 46) / 2;
        double crest = scene.settings().weirCrestMm();
        List<Name> names = List.of(
                Name.on("column", section.axisMm, (section.column().openingMm() + base) / 2),
                Name.on("funnel", section.axisMm, midFunnel),
                Name.on("neck", section.axisMm, midNeck),
                Name.on("cup", (section.cupLeftMm + section.axisMm - neck) / 2, section.lipMm() + 14),
                new Name("lip", last + neck + 6, section.lipMm() + 3, 1, last + neck),
                Name.on("injectorPump", 24, section.column().openingMm() - 8),
                new Name("airLine", AIR_LINE_MM, section.wallTopMm + 9, -1, Double.NaN),
                new Name(
                        "weir",
                        section.chamberRightMm - 4,
                        Math.max(section.plateFootMm - 24, crest - 60),
                        -1,
                        section.chamberRightMm),
                Name.on("filterPad", padMiddle, (section.padTopMm + section.padFootMm) / 2),
                Name.on("media", padMiddle, (section.mediaTopMm + section.mediaFootMm) / 2),
                Name.on("returnPump", section.beyondRightMm - 24, section.sumpFloorMm + 44));
        names.forEach(name -> paint(ink, name));
        if (scene.collected().waste().isPresent()
                || scene.unit().cupDrainLitresPerHour().isPresent()) {
            paint(
                    ink,
                    Name.on(
                            "wasteContainer",
                            (section.canLeftMm + section.canRightMm) / 2,
                            section.floorMm + 0.5 * Section.CAN_DEEP_MM));
        }
    }

    /** Where the air line's name begins. */
    double leftOfAirLinePx(Ink ink) {
        return view.x(AIR_LINE_MM) - ink.font(font).stringWidth(words.of("picture.part.airLine"));
    }

    /** The top of the highest name, of those painted, that begins left of a column. */
    OptionalDouble topLeftOfPx(double xPx) {
        return taken.stream()
                .filter(each -> each.getX() < xPx)
                .mapToDouble(Rectangle2D::getY)
                .min();
    }

    /** The top of the lowest place from a wanted one upward where no other name stands. */
    private double free(Rectangle2D wanted) {
        Rectangle2D place = wanted;
        for (Rectangle2D other : taken) {
            if (place.intersects(other)) {
                double top = other.getY() - place.getHeight() - 2;
                place = new Rectangle2D.Double(place.getX(), top, place.getWidth(), place.getHeight());
            }
        }
        taken.add(place);
        return place.getY();
    }

    private void paint(Ink ink, Name name) {
        FontMetrics metrics = ink.font(font);
        List<String> lines = List.of(words.of("picture.part." + name.key()).split("\n"));
        double wide = lines.stream().mapToDouble(metrics::stringWidth).max().orElse(0);
        double high = metrics.getAscent() * lines.size();
        double x = view.x(name.xMm());
        double left = name.side() < 0 ? x - wide : name.side() > 0 ? x : x - wide / 2;
        double top = free(new Rectangle2D.Double(left, view.y(name.zMm()) - high / 2, wide, high));
        if (Double.isFinite(name.partXMm())) {
            double end = name.side() > 0 ? left - 2 : left + wide + 2;
            ink.line(view.x(name.partXMm()), view.y(name.zMm()), end, view.y(name.zMm()), palette.muted(), 1);
        }
        ink.plate(new Rectangle2D.Double(left, top + 1, wide, high), palette.paper());
        for (String line : lines) {
            top += metrics.getAscent();
            ink.text(line, left + (wide - metrics.stringWidth(line)) / 2, top - 0.5, font, palette.ink());
        }
    }
}
