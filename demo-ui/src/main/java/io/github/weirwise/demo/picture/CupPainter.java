package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.SkimmateColour;
import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** The cup round the neck with what is in it, in the colour computed from its darkness. */
final class CupPainter {
    private static final double LIP_RIM_MM = 3;

    private final Section section;
    private final View view;
    private final Palette palette;

    CupPainter(Brush brush) {
        section = brush.section();
        view = brush.view();
        palette = brush.palette();
    }

    void paint(Ink ink, Scene scene) {
        double fill = Math.min(1, scene.cupMl() / section.unit().cupMl());
        double surface = section.cupFloorMm + fill * (section.lipMm() - LIP_RIM_MM - section.cupFloorMm);
        Color colour = SkimmateColour.of(scene.cupPtCo());
        double neck = section.radiusAt(section.lipMm());
        for (int side = -1; side <= 1; side += 2) {
            double inner = section.axisMm + side * (neck + 1.5);
            double outer = section.axisMm + side * section.cupRadiusMm;
            Rectangle2D room =
                    view.box(Math.min(inner, outer), section.cupFloorMm, Math.max(inner, outer), section.lipMm() + 24);
            ink.fill(room, Palette.fade(palette.paper(), 235));
            if (fill > 0.001) {
                Rectangle2D liquid =
                        view.box(Math.min(inner, outer), section.cupFloorMm, Math.max(inner, outer), surface);
                ink.fill(liquid, colour);
                ink.line(liquid.getMinX(), liquid.getMinY(), liquid.getMaxX(), liquid.getMinY(), palette.ink(), 1);
            }
        }
        glass(ink, neck);
    }

    private void glass(Ink ink, double neck) {
        Path2D cup = new Path2D.Double();
        double left = section.axisMm - section.cupRadiusMm;
        double right = section.axisMm + section.cupRadiusMm;
        double wallTop = section.lipMm() + 24;
        cup.moveTo(left, wallTop);
        cup.lineTo(left, section.cupFloorMm);
        cup.lineTo(section.axisMm - neck, section.cupFloorMm);
        cup.moveTo(section.axisMm + neck, section.cupFloorMm);
        cup.lineTo(right, section.cupFloorMm);
        cup.lineTo(right, wallTop);
        ink.draw(view.transform().createTransformedShape(cup), palette.glass(), Math.max(2, view.length(2.6)));
        Path2D lid = new Path2D.Double();
        lid.moveTo(left - 4, wallTop);
        lid.lineTo(left - 4, wallTop + 6);
        lid.lineTo(right + 4, wallTop + 6);
        lid.lineTo(right + 4, wallTop);
        ink.draw(view.transform().createTransformedShape(lid), palette.glass(), Math.max(1.6, view.length(2)));
        vent(ink);
    }

    private void vent(Ink ink) {
        double x = section.axisMm + section.cupRadiusMm * 0.6;
        double z = section.lipMm() + 30;
        ink.line(view.x(x), view.y(z), view.x(x), view.y(z + 8), palette.glass(), Math.max(2, view.length(3)));
    }
}
