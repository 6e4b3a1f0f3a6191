package io.github.weirwise.trial;

import io.github.weirwise.advice.HoldReason;
import io.github.weirwise.advice.SafeWay;
import io.github.weirwise.advice.Step;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.List;

/** Plays one tank under one policy to the horizon: a visit a day and when the policy asks for one. */
final class TankRun {
    static final int HORIZON_HOURS = 14 * 24;
    private static final int MOST_LOOKS_A_VISIT = 6;

    private final HiddenTank tank;
    private final Policy policy;
    private final Keeper keeper;
    private final SkimmerUnit sheet;
    private final Settings start;
    private final HarmCount harm;
    private final Promises promises;
    private final Causes causes;
    private final List<String> log;

    private Journal journal;
    private int changes;
    private int moves;
    private int looks;
    private boolean movedWhileWaiting;
    private HoldReason lastHold;

    private TankRun(TankPlan plan, Entrant entrant, List<String> log) {
        this.log = log;
        tank = new HiddenTank(plan);
        policy = entrant.forTank().apply(tank);
        keeper = new Keeper(tank);
        sheet = plan.unit().sheet();
        start = sheet.ratedSettings(plan.startCrestMm());
        harm = new HarmCount(tank);
        promises = new Promises(tank);
        causes = new Causes(tank, keeper);
        journal = new Journal(plan.known());
    }

    static Outcome play(TankPlan plan, Entrant entrant) {
        return new TankRun(plan, entrant, null).toTheEnd();
    }

    /** The same, writing down every visit. */
    static Outcome play(TankPlan plan, Entrant entrant, List<String> log) {
        return new TankRun(plan, entrant, log).toTheEnd();
    }

    private Outcome toTheEnd() {
        for (int hour = -24 * tank.plan().historyDays(); hour < 0; hour += 24) {
            tank.runTo(hour);
            write(keeper.routine());
        }
        int next = 0;
        while (next < HORIZON_HOURS) {
            tank.runTo(next);
            tank.startAirIfStopped().ifPresent(this::write);
            write(keeper.routine());
            next = visit();
        }
        tank.runTo(HORIZON_HOURS);
        return outcome();
    }

    /** One visit: extra readings as asked, then one step. Returns the hour of the next visit. */
    private int visit() {
        Decision decision = ask();
        int asked = 0;
        while (decision.step() instanceof Step.Look look && asked < MOST_LOOKS_A_VISIT) {
            looks++;
            asked++;
            write(keeper.look(look.what()));
            decision = ask();
        }
        Step step = decision.step();
        promises.make(decision, causes);
        int tomorrow = (Math.floorDiv(tank.hour(), 24) + 1) * 24;
        lastHold = null;
        if (step instanceof Step.Hold hold) {
            lastHold = hold.reason();
            return Math.min(tomorrow, Math.max(tank.hour() + 1, TrialClock.hourNotBefore(hold.until())));
        }
        act(step);
        return tomorrow;
    }

    private Decision ask() {
        Decision decision = policy.next(sheet, start, journal, now());
        if (log != null) {
            log.add("      -> " + JournalLine.of(decision));
        }
        return decision;
    }

    private Instant now() {
        return TrialClock.at(tank.hour());
    }

    private void act(Step step) {
        if (step instanceof Step.MoveWeir move) {
            move(move.toCrestMm(), move.probe() && Math.abs(move.byMm()) <= 2);
        } else if (step instanceof Step.ServicePart service) {
            changes++;
            promises.changed();
            harm.changed();
            for (Part part : service.parts()) {
                tank.service(part);
                write(new Service(now(), part));
            }
        } else if (step instanceof Step.MakeSafe safe) {
            makeSafe(safe);
        }
    }

    private void move(double toCrestMm, boolean probe) {
        if (causes.waitingIsRight() && !probe) {
            movedWhileWaiting = true;
        }
        changes++;
        moves++;
        promises.changed();
        harm.before(probe);
        tank.moveWeir(toCrestMm);
        harm.after();
        write(new WeirMove(now(), tank.crestMm(), probe));
    }

    private void makeSafe(Step.MakeSafe safe) {
        if (safe.how() == SafeWay.START_THE_AIR || safe.how() == SafeWay.START_PUMPS) {
            tank.startAirIfStopped().ifPresent(this::write);
            return;
        }
        if (safe.how() != SafeWay.LOWER_WEIR) {
            promises.changed();
            harm.changed();
            tank.stopAir();
            write(new Happening(now(), Happening.Kind.PUMP_STOPPED));
            return;
        }
        movedWhileWaiting |= causes.waitingIsRight();
        changes++;
        moves++;
        promises.changed();
        harm.beforeMakingSafe();
        tank.moveWeir(safe.toCrestMm());
        harm.after();
        write(new WeirMove(now(), tank.crestMm(), false));
    }

    private void write(JournalEntry entry) {
        journal = journal.with(entry);
        if (log != null) {
            TruePoint point = tank.steadyNow();
            log.add(String.format(
                    "  day %5.2f  %s   [true: steady x%.2f, now x%.2f, level %.1f, %s]",
                    tank.hour() / 24.0,
                    JournalLine.of(entry),
                    Math.exp(point.logAmount()),
                    tank.amountNow(),
                    point.levelMm(),
                    causes.acting()));
        }
    }

    private Outcome outcome() {
        Cup cup = tank.cup();
        Truth truth = tank.truth();
        promises.end();
        double amount = cup.amountOver(HORIZON_HOURS, 24);
        boolean inBand = Truth.outside(Math.log(amount)) == 0
                && truth.darknessFits(cup.darknessOver(HORIZON_HOURS, 24))
                && !cup.floodedBetween(HORIZON_HOURS - 24, HORIZON_HOURS);
        if (!inBand && (lastHold == HoldReason.BEST_THERE_IS || lastHold == HoldReason.LITTLE_TO_SKIM)) {
            double best = truth.bestMark(HORIZON_HOURS);
            inBand = !truth.inBand(HORIZON_HOURS, best) && Math.abs(best - tank.landedCrestMm()) <= 2;
        }
        int left = (int) tank.ailments().stream()
                .filter(each -> each.wantsService(HORIZON_HOURS))
                .count();
        return new Outcome(
                tank.plan().label(),
                inBand,
                left,
                movedWhileWaiting,
                changes,
                moves,
                looks,
                harm.count(HORIZON_HOURS),
                firstHourInBand(cup),
                daysOut(cup),
                removed(cup),
                promises.told());
    }

    private static int firstHourInBand(Cup cup) {
        for (int hour = 0; hour < HORIZON_HOURS; hour += 4) {
            if (Truth.outside(Math.log(cup.amountOver(hour, 24))) == 0) {
                return hour;
            }
        }
        return HORIZON_HOURS;
    }

    private static double daysOut(Cup cup) {
        int out = 0;
        for (int hour = 1; hour <= HORIZON_HOURS; hour++) {
            out += Truth.outside(Math.log(cup.amountOver(hour, 1))) > 0 ? 1 : 0;
        }
        return out / 24.0;
    }

    private double removed(Cup cup) {
        double colour = cup.amountOver(HORIZON_HOURS, HORIZON_HOURS) * cup.darknessOver(HORIZON_HOURS, HORIZON_HOURS);
        return colour / tank.plan().unit().darknessPtCo();
    }
}
