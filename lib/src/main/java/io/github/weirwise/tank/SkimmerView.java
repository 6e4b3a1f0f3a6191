package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;

import io.github.weirwise.report.Range;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.Settings;

/** How the tank looks from inside the skimmer: the device's settings in this instant of the tank. */
final class SkimmerView {
    /** The device's settings end here; a tank that leaves them is answered as at the limit. */
    private static final Range LOAD_MG_PER_LITRE = new Range(0, 500);

    private static final Range SALINITY = new Range(0, 42);
    private static final Range CELSIUS = new Range(5, 40);
    private static final double LOWEST_CREST_MM = 1;

    private final double breakInBoost;
    private final double strainerLoss;
    private final double padHeadMm;
    private final Biofilter biofilter;
    private final TankBody body;
    private final double ratedFlow;
    private final LoadNoise noise;

    SkimmerView(TankPlan plan) {
        TankParameters p = plan.parameters();
        breakInBoost = p.value(TankParameter.BREAK_IN_BOOST);
        strainerLoss = p.value(TankParameter.STRAINER_WORST_LOSS);
        padHeadMm = p.value(TankParameter.PAD_HEAD_MM);
        biofilter = plan.biofilter();
        body = plan.body();
        ratedFlow = plan.unit().ratedFlowLitresPerHour();
        noise = LoadNoise.of(plan);
    }

    /** Return flow and the level beyond the weir that it makes. */
    void setFlow(Moment now, TankDraft draft, double[] y) {
        double drawn =
                draft.flowing() ? draft.y[FLOW_LITRES_PER_HOUR] * (1 - strainerLoss * share(y[STRAINER_CLOG])) : 0;
        double needs = body.pumpNeedsLitres();
        double supply = needs > 0 ? share(now.sumpLitres / needs) : 1;
        now.flowLitresPerHour = drawn * supply;
        now.levelBeyondWeirMm = biofilter.levelMm(share(y[PAD_CLOG]), now.flowLitresPerHour / ratedFlow, padHeadMm);
    }

    Settings settings(Moment now, TankDraft draft, double[] y) {
        double load = now.mgPerLitre(Math.max(0, y[SKIMMABLE_G])) * noise.factor(now.hours);
        Condition condition = new Condition(
                LOAD_MG_PER_LITRE.clamp(load),
                draft.is(AIR_LINE_IN_WATER) ? 0 : 1 - share(y[AIR_LINE_CREEP]),
                (1 - share(y[PUMP_WEAR])) * (1 - share(y[NOZZLE_SCALE])),
                share(y[NECK_FILM]),
                share(y[OIL]),
                Math.max(0, Math.min(3, y[AGENT] + breakInBoost * y[BREAK_IN_LEFT])),
                draft.y[BACK_PRESSURE_PA],
                now.levelBeyondWeirMm,
                Math.max(LOWEST_CREST_MM - draft.y[WEIR_CREST_MM], draft.y[WEIR_SLIP_MM]));
        return new Settings(
                draft.y[WEIR_CREST_MM],
                now.flowLitresPerHour,
                draft.is(INJECTOR_ON) && draft.powered() ? draft.y[AIR_LITRES_PER_HOUR] : 0,
                CELSIUS.clamp(now.celsius),
                SALINITY.clamp(now.practicalSalinity),
                condition);
    }

    private static double share(double value) {
        return Math.max(0, Math.min(1, value));
    }
}
