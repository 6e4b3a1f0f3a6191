package io.github.weirwise.trial;

import io.github.weirwise.diagnosis.Cause;
import java.util.EnumSet;
import java.util.Set;

/** Which causes would be a right answer at this moment. */
final class Causes {
    private static final double ACTS = 0.1;
    /** A passing cause between these sizes may be named or not: both are right. */
    private static final double HARDLY_ACTS = 0.03;

    private static final double CLEARLY_ACTS = 0.15;
    private static final double RESTART_SHOWS = 0.03;

    private final HiddenTank tank;
    private final Keeper keeper;

    Causes(HiddenTank tank, Keeper keeper) {
        this.tank = tank;
        this.keeper = keeper;
    }

    /** Any of these is right. */
    Set<Cause> acting() {
        int hour = tank.hour();
        Set<Cause> right = EnumSet.noneOf(Cause.class);
        boolean explained = false;
        for (Ailment each : tank.ailments()) {
            double size = each.size(hour);
            boolean passes = each.kind().course() == HiddenCause.Course.PASSING;
            if (size > (passes ? HARDLY_ACTS : ACTS)) {
                right.add(each.kind().cause());
                explained |= each.kind().serviceable() || passes && size > CLEARLY_ACTS;
            }
        }
        if (tank.lostByRestart() > RESTART_SHOWS || tank.settling()) {
            right.add(Cause.JUST_CHANGED);
        }
        if (keeper.misread()) {
            right.add(Cause.READING_ERROR);
        }
        double healthy = tank.truth()
                .at(hour, tank.landedCrestMm(), 1, each -> each.kind().course() == HiddenCause.Course.LASTING)
                .logAmount();
        int way = Seen.wantedWay(Math.exp(healthy));
        if (way != 0) {
            right.add(way > 0 ? Cause.WEIR_TOO_LOW : Cause.WEIR_TOO_HIGH);
        } else if (!explained) {
            right.add(Cause.NOTHING_WRONG);
        }
        return right;
    }

    /** Whether the weir should be left alone because something passes by itself. */
    boolean waitingIsRight() {
        return tank.plan().onlyPasses() || tank.ailments().stream().anyMatch(each -> each.passing(tank.hour()));
    }
}
