package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.SkimmateColour;
import java.awt.Color;

/**
 * The colours of the foam. Foam scatters light, so it is far paler than its liquid: the wetter and the weaker, the nearer to
 * white. Films are drawn darker and cells lighter than the mean, by as much as their areas ask for.
 *
 * @param mean what the eye makes of it from a distance
 * @param film between the cells
 * @param cell the cells
 */
record FoamTone(Color mean, Color film, Color cell) {
    private static final double TINT = 0.3;
    private static final double OF_LIQUID = 0.3;
    private static final int LIGHTER = 13;

    static FoamTone of(Sight sight, Palette palette) {
        double wet = (sight.wetness() + 1) / 2;
        Color dry = Palette.mix(palette.foam(), palette.foamLine(), palette.dark() ? 0.1 : 0.32);
        Color pale = palette.dark() ? new Color(0x9DB0B8) : new Color(0xF1F5F4);
        Color grey = Palette.mix(dry, pale, wet);
        Color mean = Palette.mix(grey, SkimmateColour.of(OF_LIQUID * sight.foamPtCo()), TINT * (1 - 0.8 * wet));
        double films = 1 - cellShare(sight.wetness());
        double darker = Math.min(70, LIGHTER * (1 - films) / films);
        double lighter = darker * films / (1 - films);
        return new FoamTone(mean, shifted(mean, -darker), shifted(mean, lighter));
    }

    /** Share of a drawn area that its cells take; the rest is film. */
    static double cellShare(double wetness) {
        double side = 1 - gap(wetness);
        return side * side * (1 - 0.13 * rounding(wetness));
    }

    /** Width of the film between two cells over the distance of their middles. */
    static double gap(double wetness) {
        return 0.1 + 0.05 * (wetness + 1);
    }

    /** 0 for cells with flat walls, 1 for round ones. */
    static double rounding(double wetness) {
        return Math.max(0.25, Math.min(1, 0.65 + 0.5 * wetness));
    }

    private static Color shifted(Color colour, double by) {
        return new Color(at(colour.getRed() + by), at(colour.getGreen() + by), at(colour.getBlue() + by));
    }

    private static int at(double channel) {
        return (int) Math.max(0, Math.min(255, Math.round(channel)));
    }
}
