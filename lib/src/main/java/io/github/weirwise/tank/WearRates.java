package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;

/** Dirt and wear: each part closes toward 1 at its own pace, and only while it works. */
final class WearRates implements Rates {
    private static final double HOURS = 24;

    private final double neckPerHour;
    private final double airLinePerHour;
    private final double nozzlePerHour;
    private final double wearPerHour;
    private final double strainerPerHour;
    private final double breakInPerHour;
    private final double targetMlPerDay;
    private TankDraft draft;

    WearRates(TankPlan plan) {
        TankParameters p = plan.parameters();
        neckPerHour = perHour(p, TankProcess.NECK_FOULING, TankParameter.NECK_PER_DAY);
        airLinePerHour = perHour(p, TankProcess.AIR_LINE_CREEP, TankParameter.AIR_LINE_PER_DAY);
        nozzlePerHour = perHour(p, TankProcess.NOZZLE_SCALING, TankParameter.NOZZLE_PER_DAY);
        wearPerHour = perHour(p, TankProcess.PUMP_WEAR, TankParameter.WEAR_PER_DAY);
        strainerPerHour = perHour(p, TankProcess.STRAINER_CLOGGING, TankParameter.STRAINER_PER_DAY);
        boolean breakIn = p.runs(TankProcess.BREAK_IN);
        breakInPerHour = breakIn ? 1 / (HOURS * p.value(TankParameter.BREAK_IN_DAYS)) : 0;
        targetMlPerDay = plan.unit().target().skimmateMlPerDay();
    }

    private static double perHour(TankParameters p, TankProcess process, TankParameter parameter) {
        return p.runs(process) ? p.value(parameter) / HOURS : 0;
    }

    @Override
    public void begin(TankDraft draft) {
        this.draft = draft;
    }

    @Override
    public void add(Moment now, double[] y, double[] dy) {
        double yield = Math.max(0, y[SKIMMATE_ML_PER_DAY]) / targetMlPerDay;
        close(NECK_FILM, neckPerHour * 2 * yield / (1 + yield), y, dy);
        boolean drawsAir = now.steady.airLitresPerHour() > 0;
        close(AIR_LINE_CREEP, drawsAir ? airLinePerHour : 0, y, dy);
        boolean injecting = draft.is(INJECTOR_ON) && draft.powered();
        close(NOZZLE_SCALE, injecting ? nozzlePerHour : 0, y, dy);
        close(PUMP_WEAR, injecting ? wearPerHour : 0, y, dy);
        close(STRAINER_CLOG, draft.flowing() ? strainerPerHour : 0, y, dy);
        dy[BREAK_IN_LEFT] -= breakInPerHour * y[BREAK_IN_LEFT];
    }

    private static void close(int part, double pace, double[] y, double[] dy) {
        dy[part] += pace * (1 - y[part]);
    }
}
