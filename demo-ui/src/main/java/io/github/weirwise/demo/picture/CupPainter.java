package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.SkimmateColour;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** The cup round the necks with what came into it, layer on layer in the computed colours; a full one runs over. */
final class CupPainter extends Painter {
    private static final double LIP_RIM_MM = 3;
    private static final double SOFT_MM = 1.6;
    private static final double WALL_OVER_LIP_MM = 24;

    CupPainter(Brush brush) {
        super(brush);
    }

    /** Left and right ends of the rooms beside and between the necks. */
    private List<double[]> rooms() {
        double neck = section.radiusAt(section.lipMm()) + 1.5;
        List<double[]> rooms = new ArrayList<>();
        double left = section.cupLeftMm;
        for (double axis : section.axesMm) {
            rooms.add(new double[] {left, axis - neck});
            left = axis + neck;
        }
        rooms.add(new double[] {left, section.cupRightMm});
        return rooms;
    }

    /** What lies behind foam that comes over the lip. */
    void paintContents(Ink ink, Scene scene) {
        double deep = section.lipMm() - LIP_RIM_MM - section.cupFloorMm;
        double mlPerMm = scene.unit().cupMl() / deep;
        for (double[] room : rooms()) {
            ink.fill(
                    view.box(room[0], section.cupFloorMm, room[1], section.lipMm() + WALL_OVER_LIP_MM),
                    Palette.fade(palette.paper(), 235));
            double z = section.cupFloorMm;
            Color below = null;
            for (CupFill.Layer layer : scene.cup().layers()) {
                Color colour = SkimmateColour.of(layer.ptCo());
                double top = Math.min(section.cupFloorMm + deep, z + layer.ml() / mlPerMm);
                Rectangle2D box = view.box(room[0], z, room[1], top);
                ink.fill(box, colour);
                if (below != null && top - z > SOFT_MM) {
                    Rectangle2D border = view.box(room[0], z, room[1], z + SOFT_MM);
                    ink.fill(
                            border,
                            new GradientPaint(0, (float) border.getMaxY(), below, 0, (float) border.getMinY(), colour));
                }
                below = colour;
                z = top;
            }
            if (below != null) {
                ink.line(
                        view.x(room[0]),
                        view.y(z),
                        view.x(room[1]),
                        view.y(z),
                        Palette.mix(below, palette.ink(), 0.5),
                        1.2);
            }
        }
    }

    /** Glass, lid and vent; what runs over a full cup. */
    void paintGlass(Ink ink, Scene scene, Sight sight) {
        boolean full = sight.alarms().contains(Sight.Alarm.CUP_FULL);
        Color colour = full ? palette.danger() : palette.glass();
        double wallTop = section.lipMm() + WALL_OVER_LIP_MM;
        double neck = section.radiusAt(section.lipMm());
        Path2D cup = new Path2D.Double();
        cup.moveTo(section.cupLeftMm, wallTop);
        cup.lineTo(section.cupLeftMm, section.cupFloorMm);
        for (double axis : section.axesMm) {
            cup.lineTo(axis - neck, section.cupFloorMm);
            cup.moveTo(axis + neck, section.cupFloorMm);
        }
        cup.lineTo(section.cupRightMm, section.cupFloorMm);
        cup.lineTo(section.cupRightMm, wallTop);
        ink.draw(model(cup), colour, Math.max(2, view.length(full ? 3.6 : 2.6)));
        Path2D lid = new Path2D.Double();
        lid.moveTo(section.cupLeftMm - 4, wallTop);
        lid.lineTo(section.cupLeftMm - 4, wallTop + 6);
        lid.lineTo(section.cupRightMm + 4, wallTop + 6);
        lid.lineTo(section.cupRightMm + 4, wallTop);
        ink.draw(model(lid), palette.glass(), Math.max(1.6, view.length(2)));
        double vent = section.cupRightMm - 0.2 * (section.cupRightMm - section.cupLeftMm);
        ink.line(
                view.x(vent),
                view.y(section.lipMm() + 30),
                view.x(vent),
                view.y(section.lipMm() + 38),
                palette.glass(),
                Math.max(2, view.length(3)));
        if (full) {
            runsBack(ink, scene);
        }
    }

    /** A full cup gives its skimmate back down the neck into the column. */
    private void runsBack(Ink ink, Scene scene) {
        Color colour = SkimmateColour.of(scene.cup().ptCo());
        double neck = section.radiusAt(section.lipMm());
        for (double axis : section.axesMm) {
            for (int side = -1; side <= 1; side += 2) {
                double wall = axis + side * (neck - 2.5);
                Path2D run = new Path2D.Double();
                run.moveTo(axis + side * (neck + 4), section.lipMm() - LIP_RIM_MM);
                run.quadTo(axis + side * (neck + 1), section.lipMm() + 3, wall, section.lipMm() - 1);
                run.lineTo(wall, section.lipMm() - 0.8 * section.column().neckHeightMm());
                ink.draw(model(run), colour, Math.max(2.5, view.length(3.4)));
            }
        }
    }
}
