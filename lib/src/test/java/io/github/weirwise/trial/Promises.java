package io.github.weirwise.trial;

import io.github.weirwise.diagnosis.Cause;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Keeps what was stated until it is due, and compares. */
final class Promises {
    /** The amount "at the time of judging" is the true mean over these hours before it. */
    private static final int JUDGED_OVER_HOURS = 12;

    private final HiddenTank tank;
    private final List<Open> open = new ArrayList<>();
    private final List<Outcome.Told> told = new ArrayList<>();

    private record Open(Stated stated, boolean topRight, Set<Cause> acting, int madeHour, int dueHour) {}

    Promises(HiddenTank tank) {
        this.tank = tank;
    }

    void make(Decision decision, Causes causes) {
        decision.stated().ifPresent(stated -> {
            Set<Cause> acting = causes.acting();
            int due = Math.max(tank.hour() + JUDGED_OVER_HOURS, TrialClock.hourNotBefore(stated.judgeAt()));
            open.add(new Open(stated, acting.contains(stated.topCause()), acting, tank.hour(), due));
        });
    }

    /** Something is about to be changed: what is not yet due, except what was stated for this very change, is void. */
    void changed() {
        settle(tank.hour(), tank.hour());
    }

    void end() {
        settle(tank.hour(), Integer.MAX_VALUE);
    }

    List<Outcome.Told> told() {
        return List.copyOf(told);
    }

    private void settle(int hour, int madeBefore) {
        for (Open each : List.copyOf(open)) {
            if (each.madeHour < madeBefore) {
                told.add(each.dueHour <= hour ? judged(each) : told(each, false, false, false));
                open.remove(each);
            }
        }
    }

    private Outcome.Told judged(Open each) {
        double amount = tank.cup().amountOver(each.dueHour, JUDGED_OVER_HOURS);
        double mlPerDay = amount * tank.plan().unit().sheet().target().skimmateMlPerDay();
        boolean inRange = mlPerDay >= each.stated.mlPerDay().low()
                && mlPerDay <= each.stated.mlPerDay().high();
        return told(each, true, Truth.outside(Math.log(amount)) == 0, inRange);
    }

    private static Outcome.Told told(Open each, boolean judged, boolean inBand, boolean inRange) {
        return new Outcome.Told(
                each.stated.topChance(),
                each.topRight,
                each.stated.topCause().name(),
                each.acting.isEmpty() ? "" : each.acting.iterator().next().name(),
                each.stated.bandChance(),
                judged,
                inBand,
                inRange);
    }
}
