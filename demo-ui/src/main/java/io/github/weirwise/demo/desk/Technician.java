package io.github.weirwise.demo.desk;

import io.github.weirwise.demo.look.Words;
import io.github.weirwise.practice.FreePlay;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.FoamState;
import io.github.weirwise.unit.LipAnswer;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;

/**
 * What a technician would do now who has looked at everything (common practice): what is dangerous first, then the part that is
 * bad, then a setting that is off, then wait; the weir comes last, one small step at a time.
 */
final class Technician {
    private static final double FULL = 0.98;
    private static final double OPEN_ENOUGH = 0.9;
    private static final double FILM_ENOUGH = 0.15;
    /** Ten times what is wanted runs over as water. */
    private static final double STREAMS = 10;

    private static final double SETTING_OFF = 0.1;
    private static final double LEAST_SALINITY = 32;
    private static final double MUCH_LOAD = 4;
    private static final double LARGEST_STEP_MM = 4;
    private static final double LARGEST_SAFE_STEP_MM = 10;

    private Technician() {}

    static Phrase of(FreePlay play) {
        SkimmerUnit unit = play.unit();
        Settings settings = play.settings();
        Condition condition = settings.condition();
        OperatingPoint rest = play.rest();
        double air = settings.airLitresPerHour() / unit.ratedAirLitresPerHour();
        double flow = settings.flowLitresPerHour() / unit.ratedFlowLitresPerHour();
        if (play.truth().of(Stock.CUP_ML) >= FULL * unit.cupMl()) {
            return say("cup");
        }
        if (play.truth().is(Stock.CONTAINER_FULL)) {
            return say("container");
        }
        double wet = rest.skimmateMlPerDay() / unit.target().skimmateMlPerDay();
        if ((rest.foamState() == FoamState.FLOODING || wet > STREAMS) && air <= 1 + SETTING_OFF) {
            return say("flood", step(play, LARGEST_SAFE_STEP_MM));
        }
        if (condition.airLineOpening() < OPEN_ENOUGH) {
            return say("airLine", Quantity.of(condition.airLineOpening(), Unit.SHARE));
        }
        if (condition.neckFouling() > FILM_ENOUGH) {
            return say("neck");
        }
        if (Math.abs(air - 1) > SETTING_OFF) {
            return say("air", Quantity.of(unit.ratedAirLitresPerHour(), Unit.LITRE_PER_HOUR));
        }
        if (Math.abs(flow - 1) > SETTING_OFF) {
            return say("flow", Quantity.of(unit.ratedFlowLitresPerHour(), Unit.LITRE_PER_HOUR));
        }
        if (settings.practicalSalinity() < LEAST_SALINITY) {
            return say("salt");
        }
        if (!play.settled()) {
            return say("wait");
        }
        if (rest.foamState() == FoamState.ON_TARGET) {
            return say("leave");
        }
        if (condition.skimmableMgPerLitre() > MUCH_LOAD) {
            return say("load", step(play, LARGEST_STEP_MM));
        }
        return say(
                rest.skimmateMlPerDay() < unit.target().skimmateMlPerDay() ? "raise" : "lower",
                step(play, LARGEST_STEP_MM));
    }

    /** How far the weir should go by the unit's own answer to it, in halves of a millimetre and not further than dared at once. */
    private static Quantity step(FreePlay play, double mostMm) {
        double perMm = Math.log(
                play.unit().traits().lipAnswer().orElse(LipAnswer.USUAL).levelFactorPerMm());
        double wanted = play.unit().target().skimmateMlPerDay();
        double mm = Math.abs(Math.log(Math.max(1e-6, play.rest().skimmateMlPerDay()) / wanted) / perMm);
        return Quantity.of(Math.max(0.5, Math.min(mostMm, Math.round(2 * mm) / 2.0)), Unit.MILLIMETRE);
    }

    private static Phrase say(String what, Object... values) {
        return Words.phrase("technician." + what, values);
    }
}
