package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Optional;

/** A scene as it was painted, to be looked at pixel by pixel. */
record Painted(Scene scene, Sight sight, View view, BufferedImage image, double scale, Palette palette) {
    static Painted of(Scene scene, double scale, Palette palette) {
        UnitPicture picture = new UnitPicture(scene, Words.ENGLISH, palette);
        picture.setSize(WIDTH, HEIGHT);
        picture.name(false);
        BufferedImage image =
                new BufferedImage((int) (WIDTH * scale), (int) (HEIGHT * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.scale(scale, scale);
        picture.paint(graphics);
        graphics.dispose();
        return new Painted(scene, Sight.of(scene), picture.view(), image, scale, palette);
    }

    Color at(double xMm, double zMm) {
        return new Color(image.getRGB((int) Math.round(scale * view.x(xMm)), (int) Math.round(scale * view.y(zMm))));
    }

    /** Height of the first thing in the neck or funnel that is not air, from the lip down. */
    double seenTopMm() {
        Section section = new Section(scene.unit());
        double z = section.lipMm() - 1;
        while (z > 0 && distance(at(section.axisMm + 3, z), palette.paper()) < 12) {
            z -= 0.1;
        }
        return z;
    }

    Color mean(double fromMm, double toMm) {
        Section section = new Section(scene.unit());
        double half = 0.8 * section.radiusAt(toMm);
        Rectangle2D box = view.box(section.axisMm - half, fromMm, section.axisMm + half, toMm);
        long[] sum = new long[4];
        for (int y = (int) (scale * box.getMinY()); y < scale * box.getMaxY(); y++) {
            for (int x = (int) (scale * box.getMinX()); x < scale * box.getMaxX(); x++) {
                Color c = new Color(image.getRGB(x, y));
                sum[0] += c.getRed();
                sum[1] += c.getGreen();
                sum[2] += c.getBlue();
                sum[3]++;
            }
        }
        return new Color((int) (sum[0] / sum[3]), (int) (sum[1] / sum[3]), (int) (sum[2] / sum[3]));
    }

    boolean has(Color colour) {
        for (int pixel : image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth())) {
            if ((pixel & 0xFFFFFF) == (colour.getRGB() & 0xFFFFFF)) {
                return true;
            }
        }
        return false;
    }

    static final int WIDTH = 620;
    static final int HEIGHT = 560;
    static final SkimmerUnit JETTY = LanternQuay.jetty();
    static final double CREST_MM = 218;

    static Scene scene(SkimmerUnit unit, Settings settings, double mlPerDay, CupFill cup) {
        return new Scene(
                unit,
                settings,
                OperatingPoint.of(unit, settings),
                mlPerDay,
                Collected.inCup(cup),
                Optional.empty(),
                true);
    }

    /** With a container of four litres below the cup's open drain, and some on the floor. */
    static Scene collecting(double ml, double spilledLitres) {
        Collected.Waste waste = new Collected.Waste(ml, 4000, 1500);
        Settings rated = JETTY.ratedSettings(CREST_MM);
        return new Scene(
                JETTY,
                rated,
                OperatingPoint.of(JETTY, rated),
                205,
                new Collected(CupFill.EMPTY, Optional.of(waste), spilledLitres),
                Optional.empty(),
                true);
    }

    static Scene amount(double mlPerDay) {
        return scene(JETTY, JETTY.ratedSettings(CREST_MM), mlPerDay, CupFill.EMPTY);
    }

    static int distance(Color a, Color b) {
        return Math.max(
                Math.abs(a.getRed() - b.getRed()),
                Math.max(Math.abs(a.getGreen() - b.getGreen()), Math.abs(a.getBlue() - b.getBlue())));
    }

    static double lightness(Color c) {
        return 0.2126 * c.getRed() + 0.7152 * c.getGreen() + 0.0722 * c.getBlue();
    }
}
