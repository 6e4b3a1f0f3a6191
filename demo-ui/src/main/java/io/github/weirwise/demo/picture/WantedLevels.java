package io.github.weirwise.demo.picture;

import io.github.weirwise.report.Range;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyLaw;
import io.github.weirwise.unit.Target;
import io.github.weirwise.unit.WeirSetting;
import java.util.OptionalDouble;

/**
 * The levels over the funnel base that give the wanted amounts, by a unit in its water. They hang on everything but the weir, so
 * the newest answer is kept while only the weir moves.
 */
public final class WantedLevels {
    private SkimmerUnit unit;
    private Settings settings;
    private Range levelsMm;

    /** The levels, or the usual band about the wanted one when no crest gives the amounts. */
    public Range of(SkimmerUnit other, Settings now) {
        Settings butTheWeir = now.withWeirCrestMm(other.weir().lowestCrestMm());
        if (!other.equals(unit) || !butTheWeir.equals(settings)) {
            unit = other;
            settings = butTheWeir;
            levelsMm = solved(other, butTheWeir);
        }
        return levelsMm;
    }

    private static Range solved(SkimmerUnit unit, Settings settings) {
        Target target = unit.target();
        Range amounts = target.skimmateBandMlPerDay();
        OptionalDouble low = WeirSetting.crestForSkimmate(unit, settings, amounts.low());
        OptionalDouble high = WeirSetting.crestForSkimmate(unit, settings, amounts.high());
        if (low.isEmpty() || high.isEmpty()) {
            return Range.around(target.submergenceMm(), Scene.USUAL_HALF_BAND_MM);
        }
        SteadyLaw law = new SteadyLaw(unit);
        return new Range(
                submergenceMm(unit, law, settings, low.getAsDouble()),
                submergenceMm(unit, law, settings, high.getAsDouble()));
    }

    private static double submergenceMm(SkimmerUnit unit, SteadyLaw law, Settings settings, double crestMm) {
        return OperatingPoint.of(unit, settings.withWeirCrestMm(crestMm), law).submergenceMm();
    }
}
