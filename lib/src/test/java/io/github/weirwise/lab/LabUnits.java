package io.github.weirwise.lab;

import io.github.weirwise.report.Range;
import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Layout;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Target;
import io.github.weirwise.unit.Weir;
import io.github.weirwise.unit.WeirSetting;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The data sheets that the panel's keepers have: four shapes of the laboratory, no unit of the demo. A cup holds four days
 * of the wanted amount and has no drain. The mean life is the one with which the library's own steady law gives the wanted amount at the
 * wanted level, as a maker would state it.
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
        Target target = new Target(levelMm, mlPerDay, DARK_TEA_PT_CO);
        double low = 5;
        double high = 120;
        SkimmerUnit unit = null;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            unit = new SkimmerUnit(
                    "lab " + name,
                    1,
                    column,
                    weir,
                    cupMl,
                    OptionalDouble.empty(),
                    flow,
                    air,
                    FirstRoundUnits.traits(middle),
                    target,
                    Layout.IN_SUMP);
            if (amountAtWantedLevel(unit) < mlPerDay) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return unit;
    }

    private static double amountAtWantedLevel(SkimmerUnit unit) {
        var rated = unit.ratedSettings(unit.weir().lowestCrestMm());
        double crest = WeirSetting.crestForSubmergence(
                        unit, rated, unit.target().submergenceMm())
                .orElseThrow();
        return OperatingPoint.of(unit, unit.ratedSettings(crest)).skimmateMlPerDay();
    }
}
