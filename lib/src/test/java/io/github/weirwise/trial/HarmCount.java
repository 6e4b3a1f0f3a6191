package io.github.weirwise.trial;

import java.util.ArrayList;
import java.util.List;

/** Judges every weir move against the truth: did it lead away from the band, flood, or hide a fault? */
final class HarmCount {
    /** The distance to the band, as a logarithm of the amount, may grow by a tenth. */
    private static final double FARTHER = Math.log(1.1);

    private static final int FLOOD_HOURS = 24;

    private final HiddenTank tank;
    private final List<Move> moves = new ArrayList<>();
    private Move current;

    private static final class Move {
        private int hour;
        private int untilHour = Integer.MAX_VALUE;
        private boolean probe;
        private boolean hidFault;
        private boolean flooding;
        private double before;
        private double after;
    }

    HarmCount(HiddenTank tank) {
        this.tank = tank;
    }

    /** Something was changed: what comes later is no longer the fault of the last move. */
    void changed() {
        if (current != null) {
            current.untilHour = Math.min(current.untilHour, tank.hour());
        }
    }

    void before(boolean probe) {
        changed();
        current = new Move();
        current.hour = tank.hour();
        current.probe = probe;
        current.before = Truth.outside(tank.steadyNow().logAmount());
        current.hidFault = faultIsTheMainReason();
        current.flooding = tank.cup().floodedBetween(tank.hour() - 24, tank.hour());
        moves.add(current);
    }

    /** Lowering the weir well while it floods is no harm, whatever the reason. */
    void beforeMakingSafe() {
        before(false);
        current.probe = current.flooding;
    }

    void after() {
        current.after = Truth.outside(tank.steadyNow().logAmount());
    }

    private boolean faultIsTheMainReason() {
        int hour = tank.hour();
        if (tank.ailments().stream().noneMatch(each -> each.wantsService(hour))) {
            return false;
        }
        double with = tank.steadyNow().logAmount();
        double without = tank.truth().serviced(hour, tank.landedCrestMm()).logAmount();
        return Math.abs(with - without) > Math.abs(without);
    }

    Outcome.Harm count(int horizonHours) {
        int hid = 0;
        int flooded = 0;
        int farther = 0;
        for (Move move : moves) {
            int until = Math.min(horizonHours, Math.min(move.untilHour, move.hour + FLOOD_HOURS));
            if (move.probe) {
                continue;
            }
            if (move.hidFault) {
                hid++;
            } else if (!move.flooding && tank.cup().floodedBetween(move.hour, until)) {
                flooded++;
            } else if (move.after > move.before + FARTHER) {
                farther++;
            }
        }
        return new Outcome.Harm(hid, flooded, farther);
    }
}
