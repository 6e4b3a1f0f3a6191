package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Belief;
import io.github.weirwise.diagnosis.Mixture;
import io.github.weirwise.report.Range;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Sum;
import io.github.weirwise.unit.Target;
import java.util.EnumSet;
import java.util.Set;

/** What should be seen a day after a step, by the belief, with ranges as wide as this unit's past forecasts ask. */
final class Forecast {
    /** Darkness goes with the root of the amount (Stevenson 2007), give or take the water's own tone. */
    private static final double DARKNESS_SD = 0.5;

    private final Belief belief;

    Forecast(Belief belief) {
        this.belief = belief;
    }

    Expectation after(Step step) {
        double mm =
                step instanceof Step.MoveWeir move ? move.byMm() : step instanceof Step.MakeSafe safe ? safe.byMm() : 0;
        Set<Part> parts = step instanceof Step.ServicePart service ? EnumSet.copyOf(service.parts()) : Set.of();
        Mixture amount = belief.prospects().after(mm, parts).tomorrow().told(belief.width());
        Range log = amount.middle80();
        Target target = belief.unit().target();
        double wanted = target.skimmateMlPerDay();
        Range level = belief.sum(Sum.LEVEL, 1).middle80();
        return new Expectation(
                new Range(level.low() + mm, level.high() + mm),
                new Range(wanted * Math.exp(log.low()), wanted * Math.exp(log.high())),
                darkness(amount, target),
                amount.between(Math.log(Target.AMOUNT_BAND.low()), Math.log(Target.AMOUNT_BAND.high())));
    }

    private static Range darkness(Mixture amount, Target target) {
        double middle = Math.sqrt(Math.max(1, target.darknessPtCo().low())
                * Math.max(1, target.darknessPtCo().high()));
        double log = Math.log(middle) - 0.5 * amount.mean();
        double sd = 1.2816 * Math.hypot(DARKNESS_SD, 0.5 * amount.sd());
        return new Range(Math.exp(log - sd), Math.exp(log + sd));
    }
}
