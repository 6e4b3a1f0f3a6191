package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;

import io.github.weirwise.report.Work;
import java.util.Arrays;
import org.hipparchus.ode.OrdinaryDifferentialEquation;

/** The tank's equations, per hour: the groups of processes in their order. */
final class TankRates implements OrdinaryDifferentialEquation {
    private static final double MORNING = 9;
    /** The last tenth of the water cannot be drawn by foam or flood; above a fifth all can. */
    private static final double DRAWN_DOWN = 10;

    private final TankBody body;
    private final SkimmerView view;
    private final Rates[] groups;
    private final double swingCelsius;
    private final Moment now = new Moment();
    private TankDraft draft;

    TankRates(TankPlan plan, SkimmerLaw law) {
        body = plan.body();
        view = new SkimmerView(plan);
        TankParameters p = plan.parameters();
        boolean swing = p.runs(TankProcess.DAY_SWING);
        swingCelsius = swing ? p.value(TankParameter.TEMPERATURE_SWING_CELSIUS) : 0;
        groups = new Rates[] {
            new FoamRates(plan, law, view),
            new WaterRates(plan),
            new WasteRates(plan),
            new NitrogenRates(plan),
            new OxygenRates(plan),
            new WearRates(plan)
        };
    }

    /** Takes over settings that may have changed. */
    void begin(TankDraft changed) {
        draft = changed;
        for (Rates group : groups) {
            group.begin(changed);
        }
    }

    @Override
    public int getDimension() {
        return FLOWING;
    }

    @Override
    public double[] computeDerivatives(double hours, double[] y) {
        Work.step();
        double[] dy = new double[FLOWING];
        look(hours, y);
        for (Rates group : groups) {
            group.add(now, y, dy);
        }
        return dy;
    }

    /** What can be said of an instant without any rates. */
    Moment look(double hours, double[] y) {
        now.hours = hours;
        now.celsius = draft.y[WATER_CELSIUS] + swingCelsius * swing(hours);
        now.practicalSalinity = TankDraft.practicalSalinity(y);
        now.litres = TankDraft.litres(y, now.practicalSalinity, draft.y[WATER_CELSIUS]);
        now.drawableShare = Math.max(0, Math.min(1, DRAWN_DOWN * now.litres / body.runningLitres() - 1));
        now.sumpLitres = now.litres - body.heldLitres() + (draft.flowing() ? 0 : body.drainDownLitres());
        view.setFlow(now, draft, y);
        return now;
    }

    SkimmerView view() {
        return view;
    }

    /** A day's rhythm, -1 to 1: lowest before dawn, highest in the afternoon. */
    static double swing(double hours) {
        return Math.sin(2 * Math.PI * (hours - MORNING) / 24);
    }

    /** Absolute errors that do no harm, by component; the ledgers follow the stocks exactly and need no control. */
    static double[] tolerances(TankPlan plan) {
        double litres = plan.body().runningLitres();
        double[] tolerance = new double[FLOWING];
        Arrays.fill(tolerance, 1e-6);
        tolerance[WATER_KG] = 1e-6 * litres;
        tolerance[SALT_KG] = 1e-6 * litres;
        for (int i = ALKALINITY_EQ; i <= NITRATE_G; i++) {
            tolerance[i] = 1e-6 * litres;
        }
        tolerance[OXYGEN_MG_PER_LITRE] = 1e-2;
        tolerance[SKIMMATE_ML_PER_DAY] = 1e-3 * plan.unit().target().skimmateMlPerDay();
        tolerance[CUP_ML] = 1e-1;
        tolerance[CONTAINER_ML] = 1e-1;
        Arrays.fill(tolerance, FIRST_OF_LEDGER, FLOWING, Double.MAX_VALUE);
        return tolerance;
    }
}
