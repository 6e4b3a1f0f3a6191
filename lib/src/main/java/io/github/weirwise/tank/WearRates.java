package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;
import static io.github.weirwise.tank.TankParameter.*;

/** Dirt and wear: each part closes toward 1 at its own pace, and only while it works. */
final class WearRates implements Rates {
    private final Pace p;
    private final double targetMlPerDay;
    private TankDraft draft;

    WearRates(TankPlan plan) {
        p = new Pace(plan);
        targetMlPerDay = plan.unit().target().skimmateMlPerDay();
    }

    @Override
    public void begin(TankDraft draft) {
        this.draft = draft;
    }

    @Override
    public void add(Moment now, double[] y, double[] dy) {
        double yield = Math.max(0, y[SKIMMATE_ML_PER_DAY]) / targetMlPerDay;
        close(NECK_FILM, p.perHour(NECK_PER_DAY) * 2 * yield / (1 + yield), y, dy);
        boolean drawsAir = now.steady.airLitresPerHour() > 0;
        close(AIR_LINE_CREEP, drawsAir ? p.perHour(AIR_LINE_PER_DAY) : 0, y, dy);
        boolean injecting = draft.is(INJECTOR_ON) && draft.powered();
        close(NOZZLE_SCALE, injecting ? p.perHour(NOZZLE_PER_DAY) : 0, y, dy);
        close(PUMP_WEAR, injecting ? p.perHour(WEAR_PER_DAY) : 0, y, dy);
        close(STRAINER_CLOG, draft.flowing() ? p.perHour(STRAINER_PER_DAY) : 0, y, dy);
        dy[BREAK_IN_LEFT] -= p.closingByDays(BREAK_IN_DAYS) * y[BREAK_IN_LEFT];
    }

    private static void close(int part, double pace, double[] y, double[] dy) {
        dy[part] += pace * (1 - y[part]);
    }
}
