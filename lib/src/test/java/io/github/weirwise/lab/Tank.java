package io.github.weirwise.lab;

import io.github.weirwise.lab.truth.Fouling;
import io.github.weirwise.lab.truth.Response;
import io.github.weirwise.unit.Part;
import java.util.List;
import java.util.OptionalInt;

/** One hidden tank in time, by the hour. A copy goes on by itself, to see what would have come. */
public final class Tank {
    /** Foam that starts from nothing is this far below where it settles, a logarithm. */
    private static final double DRIEST_START_LOG = 4;

    private final Plan plan;
    private final Fouling fouling;
    private final boolean[] cured;
    private final Cup cup;
    private int hour;
    private double markMm;
    private double landedMm;
    private double log;
    private double airSet = 1;
    private int airLessSince;
    private int airBackHour = Integer.MIN_VALUE;
    private int washedHour = Integer.MIN_VALUE / 2;
    private double washedFall;
    private final Course course;

    Tank(Plan plan) {
        this.plan = plan;
        fouling = new Fouling(plan.startFouling());
        cured = new boolean[plan.faults().size()];
        cup = new Cup(plan.sheet());
        hour = plan.firstHour() - Plan.BEFORE_HOURS;
        markMm = plan.startCrestMm();
        landedMm = markMm;
        course = new Course(hour, plan.horizonHours() + Plan.AFTERWARDS_HOURS);
        log = now().logAmount();
    }

    private Tank(Tank other) {
        plan = other.plan;
        fouling = new Fouling(other.fouling);
        cured = other.cured.clone();
        cup = new Cup(other.cup);
        hour = other.hour;
        markMm = other.markMm;
        landedMm = other.landedMm;
        log = other.log;
        airSet = other.airSet;
        airLessSince = other.airLessSince;
        airBackHour = other.airBackHour;
        washedHour = other.washedHour;
        washedFall = other.washedFall;
        course = new Course(hour, plan.horizonHours() + Plan.AFTERWARDS_HOURS);
    }

    /** The same tank, free to go its own way; its course begins now. */
    Tank fork() {
        return new Tank(this);
    }

    void runTo(int until) {
        while (hour < until) {
            anHour();
        }
    }

    private void anHour() {
        for (Upkeep each : plan.upkeep()) {
            if (each.hour() == hour) {
                service(each.part());
            }
        }
        for (Part part : Part.values()) {
            double pace = plan.pacePerHour()[part.ordinal()];
            if (pace > 0) {
                fouling.set(part, fouling.of(part) + pace);
            }
        }
        List<Fault> faults = plan.faults();
        for (int i = 0; i < faults.size(); i++) {
            Fault fault = faults.get(i);
            double growth = cured[i] ? 0 : fault.growth(hour);
            if (growth > 0) {
                fouling.set(fault.part(), fouling.of(fault.part()) + growth);
            }
        }
        if (airSet < 1 && hour - airLessSince >= Habits.AIR_LEFT_OFF_HOURS) {
            airSet = 1;
            airBackHour = hour;
        }
        boolean off = airSet == 0 || plan.water().powerCut(hour);
        double rest = now().logAmount();
        double before = Math.max(log, rest - DRIEST_START_LOG);
        log = off ? Response.LEAST_LOG : rest + (before - rest) * Math.exp(-1 / plan.lagHours());
        double amount = off ? 0 : Math.exp(log);
        boolean flood = cup.take(amount);
        course.note(hour, amount, flood, airSet == 0, fouling.over(0.5).size());
        hour++;
    }

    /** The unit at rest as it is now, air on. */
    Response now() {
        return at(markMm);
    }

    /** The unit at rest as it is now but with the weir's mark elsewhere. */
    Response at(double mark) {
        double passing = plan.water().passing(hour) + washed(hour);
        return plan.law()
                .at(
                        mark + landedMm - markMm,
                        airSet == 0 ? 1 : airSet,
                        fouling,
                        plan.water().foaminess(hour),
                        passing);
    }

    /** What is to be expected some hours on with the mark elsewhere and parts serviced now; no noise. */
    Response expected(double mark, Fouling after, int hoursOn) {
        double passing = plan.water().passing(hour, hoursOn) + washed(hour + hoursOn);
        return plan.law()
                .at(
                        mark + landedMm - markMm,
                        airSet == 0 ? 1 : airSet,
                        after,
                        plan.water().foaminess(hour, hoursOn),
                        passing);
    }

    private double washed(int at) {
        return -washedFall * Math.exp(-(at - washedHour) / Habits.WASHED_HOURS);
    }

    void moveWeir(double toMark) {
        markMm = toMark;
        landedMm = toMark + Dice.near(Dice.of(plan.seed(), "hand", hour), 0, Habits.HAND_MM);
    }

    void service(Part part) {
        var dice = Dice.of(plan.seed(), "service " + part, hour);
        fouling.set(part, Math.min(fouling.of(part), Habits.LEFT_BY_SERVICE * dice.nextDouble()));
        for (int i = 0; i < cured.length; i++) {
            cured[i] |=
                    plan.faults().get(i).part() == part && plan.faults().get(i).fromHour() <= hour;
        }
        if (part == Part.NECK_AND_CUP) {
            washedHour = hour;
            washedFall = Dice.between(dice, Habits.WASHED_FALL_LOG[0], Habits.WASHED_FALL_LOG[1]);
        }
    }

    /** Sets the air, as a share of all that the injectors draw; 0 stops it. */
    void setAir(double share) {
        airLessSince = hour;
        airSet = share;
    }

    /** The air as set, as a share of all that the injectors draw. */
    double airSet() {
        return airSet;
    }

    /** The hour at which somebody set the air back to full unasked, when that was after an hour. */
    OptionalInt airBackSince(int since) {
        return airBackHour > since ? OptionalInt.of(airBackHour) : OptionalInt.empty();
    }

    boolean airOn() {
        return airSet > 0;
    }

    int hour() {
        return hour;
    }

    /** Where the weir's mark says it stands. */
    double markMm() {
        return markMm;
    }

    /** Logarithm of the amount that comes now over the wanted. */
    double log() {
        return airOn() ? log : Response.LEAST_LOG;
    }

    Fouling fouling() {
        return fouling;
    }

    Cup cup() {
        return cup;
    }

    Course course() {
        return course;
    }

    Plan plan() {
        return plan;
    }
}
