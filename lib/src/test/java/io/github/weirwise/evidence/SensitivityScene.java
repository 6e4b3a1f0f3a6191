package io.github.weirwise.evidence;

import io.github.weirwise.unit.ColumnAssumptions;
import io.github.weirwise.unit.FoamTraits;
import io.github.weirwise.unit.ReferenceColumn;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmateStrength;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyInputs;
import io.github.weirwise.unit.SteadyLaw;
import io.github.weirwise.unit.SteadyPoint;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;

/**
 * A unit at its wanted point with one assumption changed, by the fast form: what that does while the mean life is kept, and
 * how the unit answers to its weir once the mean life is fitted again.
 *
 * @param tweak what is changed in the law's inputs, given the settings
 * @param excess multiple of what the bubbles carry into the cup
 */
record SensitivityScene(
        SkimmerUnit unit, Settings settings, BiFunction<Settings, SteadyInputs, SteadyInputs> tweak, double excess) {
    private static final double ML_PER_DAY = 86400e6;

    static SensitivityScene of(SkimmerUnit unit) {
        SkimmerUnit fitted = WorkingBox.fitted(unit, WorkingBox.anchor(unit));
        return new SensitivityScene(fitted, WorkingBox.anchor(unit), (settings, inputs) -> inputs, 1);
    }

    SensitivityScene withTraits(UnaryOperator<FoamTraits> change) {
        return new SensitivityScene(unit.withTraits(change.apply(unit.traits())), settings, tweak, excess);
    }

    SensitivityScene withSettings(UnaryOperator<Settings> change) {
        return new SensitivityScene(unit, change.apply(settings), tweak, excess);
    }

    SensitivityScene withInputs(BiFunction<Settings, SteadyInputs, SteadyInputs> change) {
        return new SensitivityScene(unit, settings, change, excess);
    }

    SensitivityScene withExcess(double multiple) {
        return new SensitivityScene(unit, settings, tweak, multiple);
    }

    private SteadyPoint at(double weirMm, double lifeFactor) {
        Settings moved = settings.withWeirCrestMm(settings.weirCrestMm() + weirMm);
        SteadyInputs inputs = tweak.apply(moved, SteadyInputs.of(unit, moved));
        return new SteadyLaw(unit).at(inputs.withMeanLifeS(lifeFactor * inputs.meanLifeS()));
    }

    double submergenceMm() {
        return at(0, 1).columnLevelM() * 1000 - unit.column().funnelBaseMm();
    }

    double skimmateMlPerDay() {
        return at(0, 1).skimmateM3PerS() * ML_PER_DAY;
    }

    double darknessPtCo() {
        double load = settings.condition().skimmableMgPerLitre();
        double strength = SkimmateStrength.mgPerLitre(unit.traits(), load, at(0, 1).gasPerSkimmate());
        return SkimmateStrength.darknessPtCo(load + excess * (strength - load));
    }

    /** Skimmate after a move of the weir over the wanted amount, with the life that gives the wanted amount before. */
    double answerTo(double weirMm) {
        double wanted = unit.target().skimmateMlPerDay() / ML_PER_DAY;
        double low = 0.01;
        double high = 50;
        while (high - low > 1e-12 * high) {
            double middle = 0.5 * (low + high);
            if (at(0, middle).skimmateM3PerS() < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return at(weirMm, high).skimmateM3PerS() / at(0, high).skimmateM3PerS();
    }

    /** The same by the full column under given assumptions; NaN where no life gives the wanted amount. */
    static double columnAnswer(SkimmerUnit unit, ColumnAssumptions assumptions, double weirMm) {
        Settings anchor = WorkingBox.anchor(unit);
        try {
            SkimmerUnit fitted = ReferenceColumn.withFittedLife(unit, anchor, assumptions);
            Settings moved = anchor.withWeirCrestMm(anchor.weirCrestMm() + weirMm);
            return ReferenceColumn.of(fitted, moved, assumptions).skimmateMlPerDay()
                    / ReferenceColumn.of(fitted, anchor, assumptions).skimmateMlPerDay();
        } catch (IllegalArgumentException e) {
            return Double.NaN;
        }
    }
}
