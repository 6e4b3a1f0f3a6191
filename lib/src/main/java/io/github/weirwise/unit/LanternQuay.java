package io.github.weirwise.unit;

import io.github.weirwise.report.Range;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The three invented units of the Lantern Quay public aquarium's staff training tanks.
 *
 * @since 0.1
 */
public final class LanternQuay {
    private static final Range DARK_TEA_PT_CO = new Range(700, 5000);

    private LanternQuay() {}

    /** For tanks to about 300 L. */
    public static SkimmerUnit small() {
        return new SkimmerUnit(
                "Lantern Quay small",
                1,
                new Column(80, 30, 170, 70, 38, 70),
                new Weir(80, 80, 120, 210),
                500,
                OptionalDouble.empty(),
                1200,
                70,
                FoamTraits.withMeanLife(21.55),
                new Target(15, 120, DARK_TEA_PT_CO));
    }

    /** For tanks to about 650 L. */
    public static SkimmerUnit middle() {
        return new SkimmerUnit(
                "Lantern Quay middle",
                1,
                new Column(110, 30, 215, 100, 50, 90),
                new Weir(100, 100, 150, 270),
                1000,
                OptionalDouble.empty(),
                2200,
                150,
                FoamTraits.withMeanLife(24.0),
                new Target(22, 250, DARK_TEA_PT_CO));
    }

    /** For tanks to about 1300 L. */
    public static SkimmerUnit large() {
        return new SkimmerUnit(
                "Lantern Quay large",
                1,
                new Column(150, 30, 260, 130, 70, 110),
                new Weir(150, 150, 180, 330),
                2000,
                OptionalDouble.empty(),
                4000,
                300,
                FoamTraits.withMeanLife(29.5),
                new Target(28, 500, DARK_TEA_PT_CO));
    }

    /** All three, smallest first. */
    public static List<SkimmerUnit> units() {
        return List.of(small(), middle(), large());
    }
}
