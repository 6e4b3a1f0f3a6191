package io.github.weirwise.tank;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Work;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.hipparchus.ode.sampling.ODEStepHandler;

/** One run: from event to event, meals among them, integrating between. */
final class TankClock implements ODEStepHandler {
    /** Hours that an event may name. */
    static final Limit AT_HOURS = Limit.of("atHours", -1e7, 1e7, Unit.HOUR, "tank.try.giveHoursOfThe");

    private static final double SHORTEST_STEP_HOURS = 1e-9;
    /** The integrator takes no shorter interval late on the clock. */
    private static final double SHORTEST_ULPS = 2000;

    private static final double LONGEST_STEP_HOURS = 12;
    private static final double FIRST_STEP_HOURS = 3;
    private static final double RELATIVE_TOLERANCE = 1e-5;
    /** A usual day takes a hundred or two; a tank that changes faster than this cannot be followed. */
    private static final int MOST_EVALUATIONS = 20_000;

    private static final int MOST_A_DAY = 4_000;
    private static final String TOO_FAST = "it changes faster than it can be followed";

    private final TankPlan plan;
    private final TankDraft draft;
    private final EventEffects effects;
    private final TankRates rates;
    private final TankWatch watch;
    private final DormandPrince54Integrator integrator;
    private final boolean feeding;
    private final double firstHours;
    private final double everyHours;
    private final List<TankState> samples;
    private long sampled;
    private int left;

    TankClock(TankPlan plan, SkimmerLaw law, TankDraft draft, double everyHours, List<TankState> samples) {
        this.plan = plan;
        this.draft = draft;
        this.everyHours = everyHours;
        this.samples = samples;
        firstHours = draft.hours;
        effects = new EventEffects(plan);
        rates = new TankRates(plan, law);
        feeding = plan.parameters().runs(TankProcess.FEEDING) && plan.feeding().gramsPerDay() > 0;
        double[] relative = new double[Stock.FLOWING];
        Arrays.fill(relative, RELATIVE_TOLERANCE);
        integrator = new DormandPrince54Integrator(
                SHORTEST_STEP_HOURS, LONGEST_STEP_HOURS, TankRates.tolerances(plan), relative);
        integrator.setInitialStepSize(FIRST_STEP_HOURS);
        watch = new TankWatch(plan, draft);
        watch.register(integrator);
        if (everyHours < Double.POSITIVE_INFINITY) {
            integrator.addStepHandler(this);
        }
    }

    void runUntil(double untilHours, List<? extends TankEvent> events) {
        List<? extends TankEvent> due = events.stream()
                .filter(event -> event.atHours() >= firstHours && event.atHours() < untilHours)
                .sorted(Comparator.comparingDouble(TankEvent::atHours))
                .toList();
        int next = 0;
        left = (int) Math.min(Integer.MAX_VALUE, MOST_EVALUATIONS + MOST_A_DAY * (untilHours - draft.hours) / 24);
        double meal = feeding ? plan.feeding().nextMealAfter(Math.nextDown(draft.hours)) : Double.POSITIVE_INFINITY;
        while (draft.hours < untilHours) {
            Work.step();
            if (draft.y[Stock.POWER_BACK_AT_HOURS] <= draft.hours) {
                effects.powerBack(draft);
            }
            if (meal <= draft.hours) {
                effects.eat(draft, plan.feeding().mealGrams(meal));
                meal = plan.feeding().nextMealAfter(meal);
            }
            while (next < due.size() && due.get(next).atHours() <= draft.hours) {
                effects.apply(draft, due.get(next++));
            }
            double event = next < due.size() ? due.get(next).atHours() : untilHours;
            integrate(Math.min(Math.min(untilHours, event), Math.min(meal, draft.y[Stock.POWER_BACK_AT_HOURS])));
        }
    }

    private void integrate(double untilHours) {
        if (untilHours - draft.hours < Math.max(SHORTEST_STEP_HOURS, SHORTEST_ULPS * Math.ulp(untilHours))) {
            draft.hours = untilHours;
            return;
        }
        watch.look();
        rates.begin(draft);
        ODEStateAndDerivative end = followed(untilHours);
        System.arraycopy(end.getPrimaryState(), 0, draft.y, 0, Stock.FLOWING);
        draft.hours = end.getTime();
    }

    /** An embedder's thread must come back, whatever the numbers say. */
    private ODEStateAndDerivative followed(double untilHours) {
        integrator.setMaxEvaluations(left);
        try {
            ODEStateAndDerivative end = integrator.integrate(
                    rates, new ODEState(draft.hours, Arrays.copyOf(draft.y, Stock.FLOWING)), untilHours);
            left -= integrator.getEvaluations();
            for (double value : end.getPrimaryState()) {
                if (!Double.isFinite(value)) {
                    throw new TankLimitException(draft.hours, "a quantity has no finite value", null);
                }
            }
            return end;
        } catch (MathRuntimeException e) {
            String problem = left - integrator.getEvaluations() <= 0 ? TOO_FAST : "a quantity has no finite value";
            throw new TankLimitException(draft.hours, problem, e);
        } catch (OutOfRangeException e) {
            throw new TankLimitException(draft.hours, e.getMessage(), e);
        }
    }

    @Override
    public void handleStep(ODEStateInterpolator step) {
        double end = step.getCurrentState().getTime();
        double at = firstHours + (sampled + 1) * everyHours;
        while (at <= end) {
            double[] y = draft.y.clone();
            System.arraycopy(step.getInterpolatedState(at).getPrimaryState(), 0, y, 0, Stock.FLOWING);
            samples.add(new TankState(at, y));
            sampled++;
            at = firstHours + (sampled + 1) * everyHours;
        }
    }
}
