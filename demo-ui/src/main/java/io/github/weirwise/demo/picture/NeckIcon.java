package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.awt.Component;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import javax.swing.Icon;

/** A look of the foam as a small drawing: the picture of the unit at an amount that the word stands for, cut out round the neck. */
public final class NeckIcon implements Icon {
    private static final int WIDTH = 46;
    private static final int HEIGHT = 42;
    private static final int LARGE = 5;
    private static final double BELOW_LIP_MM = 70;
    private static final double ABOVE_LIP_MM = 22;
    private static final double LARGER = 2.6;

    private final FoamPainter painter;
    private final VesselPainter vessel;
    private final Sight sight;
    private final int times;

    /** The drawing of a word, small, with its bubbles larger than in the picture. */
    public NeckIcon(FoamLookWord look, Palette palette) {
        this(look, palette, 1, LARGER);
    }

    /** The same large, for a page. */
    public static NeckIcon large(FoamLookWord look, Palette palette) {
        return new NeckIcon(look, palette, LARGE, 1);
    }

    private NeckIcon(FoamLookWord look, Palette palette, int times, double larger) {
        this.times = times;
        SkimmerUnit unit = LanternQuay.jetty();
        Settings settings = unit.ratedSettings(unit.weir().lowestCrestMm());
        double log = (look.amountLog().low() + look.amountLog().high()) / 2;
        double amount = unit.target().skimmateMlPerDay() * Math.exp(log);
        Scene scene = new Scene(
                unit, settings, OperatingPoint.of(unit, settings), amount, Collected.NOTHING, Optional.empty(), true);
        sight = Sight.of(scene, larger);
        Section section = new Section(unit);
        double half = (BELOW_LIP_MM + ABOVE_LIP_MM) / 2 * WIDTH / HEIGHT;
        Rectangle2D round = new Rectangle2D.Double(
                section.axisMm - half, section.lipMm() - BELOW_LIP_MM, 2 * half, BELOW_LIP_MM + ABOVE_LIP_MM);
        View view = View.fit(round, new Rectangle2D.Double(0, 0, getIconWidth(), getIconHeight()));
        Brush brush = new Brush(section, view, palette, Words.ENGLISH, new Font(Font.SANS_SERIF, Font.PLAIN, 12));
        painter = new FoamPainter(brush);
        vessel = new VesselPainter(brush);
    }

    @Override
    public void paintIcon(Component component, Graphics g, int x, int y) {
        Graphics2D graphics = (Graphics2D) g.create(x, y, getIconWidth(), getIconHeight());
        try {
            Ink ink = new Ink(graphics);
            painter.paint(ink, sight, 0);
            vessel.columnWalls(ink);
        } finally {
            graphics.dispose();
        }
    }

    @Override
    public int getIconWidth() {
        return times * WIDTH;
    }

    @Override
    public int getIconHeight() {
        return times * HEIGHT;
    }
}
