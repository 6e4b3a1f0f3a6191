package io.github.weirwise.lab;

import io.github.weirwise.report.Range;
import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.FoamTraits;
import io.github.weirwise.unit.Layout;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Target;
import io.github.weirwise.unit.Weir;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The data sheets that the panel's keepers have: four shapes of the laboratory, no unit of the demo. A cup holds four days
 * of the wanted amount and has no drain. The foam is left as the library has it for a unit of which nothing is known.
 */
public final class LabUnits {
    private static final Range DARK_TEA_PT_CO = new Range(700, 5000);

    /** All shapes, smallest first. */
    public static final List<SkimmerUnit> ALL = List.of(
            unit("narrow", new Column(70, 25, 150, 60, 34, 60), weir(70, 100, 190), 400, 900, 50, 14, 95),
            unit("tall", new Column(100, 30, 260, 110, 46, 100), weir(90, 200, 320), 900, 1900, 130, 22, 220),
            unit("squat", new Column(120, 35, 180, 75, 60, 55), weir(120, 120, 235), 1200, 2600, 190, 20, 300),
            unit("wide", new Column(160, 40, 240, 120, 76, 100), weir(160, 170, 310), 2200, 4300, 320, 27, 550));

    private LabUnits() {}

    private static Weir weir(double widthMm, double lowestMm, double highestMm) {
        return new Weir(widthMm, widthMm, lowestMm, highestMm);
    }

    private static SkimmerUnit unit(
            String name,
            Column column,
            Weir weir,
            double cupMl,
            double flow,
            double air,
            double levelMm,
            double mlPerDay) {
        return new SkimmerUnit(
                "lab " + name,
                1,
                column,
                weir,
                cupMl,
                OptionalDouble.empty(),
                flow,
                air,
                FoamTraits.USUAL,
                new Target(levelMm, mlPerDay, DARK_TEA_PT_CO),
                Layout.IN_SUMP);
    }
}
