package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Outlook;
import io.github.weirwise.diagnosis.Possibility;
import io.github.weirwise.report.Range;
import io.github.weirwise.unit.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What should be seen at the time of judging if a step is taken: 80 % ranges over the possibilities. */
final class Forecast {
    /** Day-to-day scatter of the amount that no model explains, on its logarithm; assumed. */
    private static final double SCATTER_LOG = 0.14;

    /** Quantiles of a normal law for scatter without random numbers. */
    private static final double[] SCATTER = {-1.282, -0.524, 0, 0.524, 1.282};

    private final Situation situation;

    Forecast(Situation situation) {
        this.situation = situation;
    }

    Expectation after(Step step) {
        double crestMm = crestAfter(step);
        Part part = step instanceof Step.ServicePart service ? service.part() : null;
        List<Outlook> outlooks = new ArrayList<>();
        for (Possibility each : situation.sample()) {
            outlooks.add(each.ahead(crestMm, situation.judgeHours(), part));
        }
        double target = situation.unit().target().skimmateMlPerDay();
        return new Expectation(
                range(outlooks, Outlook::submergenceMm, 0),
                exponential(range(outlooks, Outlook::logAmount, SCATTER_LOG), target),
                exponential(range(outlooks, outlook -> Math.log(outlook.darknessPtCo() + 1), SCATTER_LOG), 1),
                chance(outlooks));
    }

    private double crestAfter(Step step) {
        if (step instanceof Step.MoveWeir move) {
            return move.toCrestMm();
        }
        return step instanceof Step.MakeSafe safe ? safe.toCrestMm() : situation.crestMm();
    }

    private double chance(List<Outlook> outlooks) {
        Band band = Band.of(situation.unit());
        double inside = 0;
        for (Outlook outlook : outlooks) {
            for (double scatter : SCATTER) {
                double log = outlook.logAmount() + SCATTER_LOG * scatter;
                inside += !outlook.flooding() && log >= band.low() && log <= band.high() ? 1 : 0;
            }
        }
        return inside / (outlooks.size() * SCATTER.length);
    }

    private static Range range(List<Outlook> outlooks, ToDoubleFunction<Outlook> value, double scatter) {
        double[] values = new double[outlooks.size() * SCATTER.length];
        int index = 0;
        for (Outlook outlook : outlooks) {
            for (double each : SCATTER) {
                values[index++] = value.applyAsDouble(outlook) + scatter * each;
            }
        }
        java.util.Arrays.sort(values);
        return new Range(values[(int) (0.1 * values.length)], values[(int) (0.9 * values.length)]);
    }

    private static Range exponential(Range logarithms, double times) {
        return new Range(times * Math.exp(logarithms.low()), times * Math.exp(logarithms.high()));
    }
}
