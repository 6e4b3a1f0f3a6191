package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.WeirSetting;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;

/** Pictures for pages: a unit with the names of its parts, and the six looks of the foam. */
public final class UnitPages {
    private static final int WIDTH = 620;
    private static final int HEIGHT = 520;
    private static final int WORD_PX = 26;

    private UnitPages() {}

    /** An invented unit on target, with a cup that has filled for a day. */
    public static BufferedImage unit(Dress dress, double scale) {
        SkimmerUnit unit = LanternQuay.jetty();
        var rated = unit.ratedSettings(unit.weir().lowestCrestMm());
        double right = WeirSetting.crestForSkimmate(unit, rated, unit.target().skimmateMlPerDay())
                .orElseThrow();
        UnitPicture picture =
                new UnitPicture(Scene.atRest(unit, rated.withWeirCrestMm(right), 24), dress.words(), dress.palette());
        picture.setSize(WIDTH, HEIGHT);
        return paint(WIDTH, HEIGHT, scale, picture::paint);
    }

    /** The foam in the neck for each word, driest first, with the word below it. */
    public static BufferedImage foam(Dress dress, double scale) {
        FoamLookWord[] words = FoamLookWord.values();
        NeckIcon first = NeckIcon.large(words[0], dress.palette());
        int wide = first.getIconWidth();
        int high = first.getIconHeight() + WORD_PX;
        return paint(words.length * wide, high, scale, graphics -> {
            Ink ink = new Ink(graphics);
            ink.fill(
                    new java.awt.Rectangle(words.length * wide, high),
                    dress.palette().paper());
            for (int i = 0; i < words.length; i++) {
                NeckIcon.large(words[i], dress.palette()).paintIcon(null, graphics, i * wide, 0);
                Font font = new Font(Font.SANS_SERIF, Font.PLAIN, 15);
                String word = dress.text("foam.short." + words[i]);
                double left = (i + 0.5) * wide - ink.font(font).stringWidth(word) / 2.0;
                ink.text(word, left, high - 8.0, font, dress.palette().ink());
            }
        });
    }

    private static BufferedImage paint(int width, int height, double scale, Consumer<Graphics2D> painter) {
        BufferedImage image = new BufferedImage(
                (int) Math.round(width * scale), (int) Math.round(height * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.scale(scale, scale);
            painter.accept(graphics);
        } finally {
            graphics.dispose();
        }
        return image;
    }
}
