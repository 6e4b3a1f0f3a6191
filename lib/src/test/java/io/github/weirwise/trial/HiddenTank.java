package io.github.weirwise.trial;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.unit.Part;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** One tank running hour by hour; hour 0 is the start of the trial. Not thread-safe. */
final class HiddenTank {
    private static final int WARM_UP_HOURS = 48;
    private static final int FEEDING_HOURS = 4;
    private static final double STILL_SETTLING = 0.4;

    private final TankPlan plan;
    private final List<Ailment> ailments;
    private final Truth truth;
    private final SplittableRandom unrestDice;
    private final Cup cup;

    private int hour;
    private double crestMm;
    private double landingMm;
    private double logAmount;
    private double gasPerLiquid = 1;
    private double unrest;
    private double lostByRestart;
    private double neckSinceHour;
    private boolean airStopped;

    HiddenTank(TankPlan plan) {
        this.plan = plan;
        ailments = plan.ailments().stream().map(Ailment::fresh).toList();
        truth = new Truth(plan, ailments, this::neckLife);
        unrestDice = Dice.of(plan.seed(), "unrest", 0);
        cup = new Cup(plan.unit().sheet());
        hour = -24 * plan.historyDays() - WARM_UP_HOURS;
        neckSinceHour = hour;
        crestMm = plan.startCrestMm();
        unrest = unrestDice.nextGaussian();
        logAmount = truth.steady(hour, crestMm).logAmount();
        runTo(-24 * plan.historyDays() - 24);
        cup.empty(hour);
        runTo(-24 * plan.historyDays());
    }

    /** Lets time pass. */
    void runTo(int untilHour) {
        while (hour < untilHour) {
            passHour();
        }
    }

    private void passHour() {
        Pace pace = plan.pace();
        double keep = Math.exp(-1 / pace.unrestHours());
        unrest = unrest * keep + Math.sqrt(1 - keep * keep) * unrestDice.nextGaussian();
        lostByRestart *= Math.exp(-1 / pace.returnHours());
        double hourOfDay = Math.floorMod(hour - pace.feedingHour(), 24);
        double fed = hourOfDay < FEEDING_HOURS ? 1 - pace.feedingDip() : 1;
        double life = Math.exp(unrest * pace.unrest())
                * (1 + pace.rhythm() * Math.sin(2 * Math.PI * (hour - pace.rhythmHour()) / 24))
                * fed
                * (1 - lostByRestart);
        TruePoint point = truth.at(hour, landedCrestMm(), life);
        double goal = airStopped ? TrueLaw.LEAST_LOG : point.logAmount();
        logAmount = goal + (logAmount - goal) * Math.exp(-1 / pace.lagHours());
        gasPerLiquid += (point.gasPerLiquid() - gasPerLiquid) * (1 - Math.exp(-1 / pace.lagHours()));
        cup.fill(
                hour,
                Math.exp(logAmount) * plan.unit().sheet().target().skimmateMlPerDay() / 24,
                truth.darkness(hour, gasPerLiquid),
                point.flooded() && !airStopped);
        hour++;
    }

    /** Factor on life by the ordinary film that grows in the neck between washings. */
    private double neckLife() {
        return 1 - plan.pace().neckPerDay() * (hour - neckSinceHour) / 24;
    }

    /** Sets the weir's mark; a hand lands within 1 mm. */
    void moveWeir(double toCrestMm) {
        crestMm = plan.unit().sheet().weir().clampMm(toCrestMm);
        landingMm = Dice.between(Dice.of(plan.seed(), "landing", hour), -1, 1);
        restart();
    }

    /** Services a part. */
    void service(Part part) {
        ailments.forEach(each -> each.service(part, hour));
        if (part == Part.NECK_AND_CUP) {
            neckSinceHour = hour;
            lostByRestart = Math.max(lostByRestart, plan.pace().washLoss());
        } else {
            restart();
        }
    }

    void stopAir() {
        airStopped = true;
    }

    /** Starts the air again if it was stopped, and says what to write down. */
    Optional<JournalEntry> startAirIfStopped() {
        if (!airStopped) {
            return Optional.empty();
        }
        airStopped = false;
        restart();
        return Optional.of(new Happening(TrialClock.at(hour), Happening.Kind.PUMP_RESTARTED));
    }

    private void restart() {
        lostByRestart = Math.max(lostByRestart, plan.pace().restartLoss());
    }

    int hour() {
        return hour;
    }

    TankPlan plan() {
        return plan;
    }

    Cup cup() {
        return cup;
    }

    Truth truth() {
        return truth;
    }

    List<Ailment> ailments() {
        return ailments;
    }

    /** Where the mark stands. */
    double crestMm() {
        return crestMm;
    }

    /** Where the mark would stand if the hand had landed exactly. */
    double landedCrestMm() {
        return crestMm + landingMm;
    }

    /** Share of life that washing or a restart still takes away. */
    double lostByRestart() {
        return lostByRestart;
    }

    /** Amount now over the target's. */
    double amountNow() {
        return Math.exp(logAmount);
    }

    /** Whether the foam is still far from where it settles. */
    boolean settling() {
        return Math.abs(logAmount - steadyNow().logAmount()) > STILL_SETTLING;
    }

    /** The true steady state at this moment without noise. */
    TruePoint steadyNow() {
        return truth.at(hour, landedCrestMm(), 1);
    }
}
