package io.github.weirwise.lab;

import io.github.weirwise.unit.Target;
import java.util.ArrayList;
import java.util.List;

/**
 * Weir moves that did harm, each counted once: the amount at rest went farther from the band by more than a tenth (a small trial move
 * is let off), parts fouled by more than half were the whole reason for the trouble, or water ran over within a day.
 */
final class HarmCount {
    private static final double HARM_LOG = 0.1;
    private static final double MUCH = 0.5;
    private static final int FLOOD_FOLLOWS_HOURS = 24;

    private final Tank tank;
    private final List<Integer> innocent = new ArrayList<>();
    private int harmful;

    HarmCount(Tank tank) {
        this.tank = tank;
    }

    /** The weir is about to be moved. */
    void before(double toMm, boolean trial) {
        if (!trial && worse(toMm) || hidesAFault()) {
            harmful++;
        } else {
            innocent.add(tank.hour());
        }
    }

    /** How many moves did harm, once the play is over. */
    int count() {
        int floods = (int) innocent.stream().filter(this::floodFollowed).count();
        return harmful + floods;
    }

    private boolean floodFollowed(int hour) {
        for (int h = hour; h < Math.min(tank.hour(), hour + FLOOD_FOLLOWS_HOURS); h++) {
            if (tank.course().flood(h)) {
                return true;
            }
        }
        return false;
    }

    private boolean worse(double toMm) {
        return outside(tank.at(toMm).logAmount()) > outside(tank.now().logAmount()) + HARM_LOG;
    }

    private boolean hidesAFault() {
        if (outside(tank.now().logAmount()) == 0) {
            return false;
        }
        Tank served = tank.fork();
        tank.fouling().over(MUCH).forEach(part -> served.fouling().clean(part));
        return outside(served.now().logAmount()) == 0;
    }

    /** How far an amount, as a logarithm of the ratio, lies outside the band. */
    private static double outside(double logAmount) {
        double low = Math.log(Target.AMOUNT_BAND.low());
        double high = Math.log(Target.AMOUNT_BAND.high());
        return Math.max(0, Math.max(low - logAmount, logAmount - high));
    }
}
