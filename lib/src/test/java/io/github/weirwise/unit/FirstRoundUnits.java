package io.github.weirwise.unit;

import io.github.weirwise.report.Range;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Three units with the steep law of lives, kept as test fixtures for the table that this project's model was first built from and
 * for journals written on them.
 */
public final class FirstRoundUnits {
    private static final Range DARK_TEA_PT_CO = new Range(700, 5000);

    private FirstRoundUnits() {}

    /** Rigid films, 0.8 mm fresh and 2.2 mm lip bubbles, a wide law of lives, foam borne by the walls. */
    public static FoamTraits traits(double meanLifeSeconds) {
        return new FoamTraits(meanLifeSeconds, 1.2, 0.8, 2.2, 0.0033, 2, 2, 0.10, 0, 0, Optional.empty());
    }

    public static SkimmerUnit small() {
        return unit(
                "First round small",
                new Column(80, 30, 170, 70, 38, 70),
                new Weir(80, 80, 120, 210),
                500,
                1200,
                70,
                21.55,
                new Target(15, 120, DARK_TEA_PT_CO));
    }

    public static SkimmerUnit middle() {
        return unit(
                "First round middle",
                new Column(110, 30, 215, 100, 50, 90),
                new Weir(100, 100, 150, 270),
                1000,
                2200,
                150,
                24.0,
                new Target(22, 250, DARK_TEA_PT_CO));
    }

    public static SkimmerUnit large() {
        return unit(
                "First round large",
                new Column(150, 30, 260, 130, 70, 110),
                new Weir(150, 150, 180, 330),
                2000,
                4000,
                300,
                29.5,
                new Target(28, 500, DARK_TEA_PT_CO));
    }

    private static SkimmerUnit unit(
            String name, Column column, Weir weir, double cupMl, double flow, double air, double lifeS, Target target) {
        return new SkimmerUnit(
                name, 1, column, weir, cupMl, OptionalDouble.empty(), flow, air, traits(lifeS), target, Layout.IN_SUMP);
    }

    /** All three, smallest first. */
    public static List<SkimmerUnit> units() {
        return List.of(small(), middle(), large());
    }
}
