package io.github.weirwise.lab;

import io.github.weirwise.advice.SafeWay;
import io.github.weirwise.advice.Step;
import io.github.weirwise.lab.rival.CarefulKeeper;
import io.github.weirwise.lab.rival.Decision;
import io.github.weirwise.lab.rival.Log;
import io.github.weirwise.lab.rival.Policy;
import io.github.weirwise.lab.rival.Visit;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plays one tank under one policy: the planned visits, and those that the policy asks for. */
final class Play {
    static final int MOST_ASKS_A_VISIT = 6;
    private static final double SAME_AIR = 0.01;

    private final Plan plan;
    private final Tank tank;
    private final Eyes eyes;
    private final Policy policy;
    private final Settings start;
    private final List<JournalEntry> entries = new ArrayList<>();
    private final List<Outcome.Told> told = new ArrayList<>();
    private final HarmCount harm;
    private final Optional<Trace> trace;
    private int notedUntil;
    private double work;
    private int moves;
    private int services;
    private int needless;
    private int looks;
    private int extraVisits;
    private int floodsSeen;
    private int floodsActedOn;

    private Play(Plan plan, Entrant entrant, Optional<Trace> trace) {
        this.plan = plan;
        this.trace = trace;
        tank = new Tank(plan);
        eyes = new Eyes(tank);
        harm = new HarmCount(tank);
        policy = entrant.forTank().apply(tank);
        start = plan.sheet().ratedSettings(plan.startCrestMm());
        notedUntil = plan.firstHour();
    }

    static Outcome of(Plan plan, Entrant entrant) {
        return new Play(plan, entrant, Optional.empty()).toTheEnd();
    }

    /** The same, writing down every visit. */
    static Outcome of(Plan plan, Entrant entrant, Trace trace) {
        return new Play(plan, entrant, Optional.of(trace)).toTheEnd();
    }

    /** The journal that was written. */
    static Journal journal(Plan plan, Entrant entrant) {
        Play play = new Play(plan, entrant, Optional.empty());
        play.toTheEnd();
        return new Journal(play.entries);
    }

    private Outcome toTheEnd() {
        for (int hour = plan.firstHour(); hour < 0; hour += plan.everyHours()) {
            tank.runTo(hour);
            write(eyes.usual());
        }
        int hour = 0;
        while (hour < plan.horizonHours()) {
            tank.runTo(hour);
            writeWhatHappened(hour);
            notedUntil = hour;
            int planned = nextPlanned(hour);
            int wished = visit(planned);
            if (wished < planned) {
                extraVisits++;
                work += Cost.EXTRA_VISIT;
            }
            hour = wished;
        }
        tank.runTo(plan.horizonHours());
        return outcome();
    }

    /** What was noted since the last visit: happenings, water on the floor, air that somebody turned on again. */
    private void writeWhatHappened(int hour) {
        plan.water().notes(notedUntil + 1, hour).forEach(this::write);
        plan.upkeep().stream()
                .filter(each -> each.noted() && each.hour() > notedUntil && each.hour() <= hour)
                .forEach(each -> write(new Service(LabClock.at(each.hour()), each.part())));
        for (int h = Math.max(0, notedUntil); h < hour; h++) {
            if (tank.course().flood(h)) {
                if (Dice.of(plan.seed(), "flood noted", h).nextDouble() < Habits.NOTED) {
                    write(new Happening(LabClock.at(h), Happening.Kind.FLOOD));
                }
                break;
            }
        }
        tank.airBackSince(notedUntil)
                .ifPresent(at -> write(new SettingChange(
                        LabClock.at(at), SettingChange.Knob.AIR, plan.sheet().ratedAirLitresPerHour())));
    }

    private int nextPlanned(int hour) {
        int next = (Math.floorDiv(hour, plan.everyHours()) + 1) * plan.everyHours();
        while (plan.missed().contains(next)) {
            next += plan.everyHours();
        }
        return next;
    }

    /** One visit; gives back when the next one is. */
    private int visit(int planned) {
        Reading reading = eyes.usual();
        boolean flood = floodSeen(reading) || floodNoted();
        write(reading);
        floodsSeen += flood ? 1 : 0;
        for (int asked = 0; asked < MOST_ASKS_A_VISIT; asked++) {
            Decision decision = policy.next(new Visit(plan.sheet(), start, new Journal(entries), now()));
            trace.ifPresent(each -> each.decided(tank, decision));
            Step step = decision.step();
            if (flood && asked == 0 && actsOnFlood(step)) {
                floodsActedOn++;
            }
            boolean last =
                    asked == MOST_ASKS_A_VISIT - 1 || !(step instanceof Step.Look || step instanceof Step.ServicePart);
            double before = new Log(new Visit(plan.sheet(), start, new Journal(entries), now()))
                    .newestAmount()
                    .orElse(Double.NaN);
            if (step instanceof Step.Look look) {
                looks++;
                work += Cost.LOOK;
                write(eyes.asked(look.what()));
            }
            boolean followed = act(step);
            if (last || !followed) {
                decision.stated().ifPresent(stated -> told.add(Judge.of(tank, step, stated, before)));
            }
            if (step instanceof Step.Hold hold) {
                return Math.min(planned, Math.max(tank.hour() + 1, LabClock.hourNotBefore(hold.until())));
            }
            if (last || !followed) {
                break;
            }
        }
        return planned;
    }

    /** A full cup or streaming foam; a cup that filled with ordinary foam over days is not one. */
    private boolean floodSeen(Reading reading) {
        boolean streaming = reading.find(Observation.FoamLook.class)
                .map(look -> look.look() == FoamLookWord.STREAMING)
                .orElse(false);
        boolean full = reading.find(Observation.CupVolume.class)
                .map(cup -> cup.full()
                        && !Cost.inBand(cup.mlPerDay() / plan.sheet().target().skimmateMlPerDay()))
                .orElse(false);
        return streaming || full;
    }

    /** Whether a flood was noted since the reading before this visit's. */
    private boolean floodNoted() {
        for (int i = entries.size() - 1; i >= 0 && !(entries.get(i) instanceof Reading); i--) {
            if (entries.get(i) instanceof Happening happening && happening.kind() == Happening.Kind.FLOOD) {
                return true;
            }
        }
        return false;
    }

    private boolean actsOnFlood(Step step) {
        return step instanceof Step.MakeSafe || step instanceof Step.MoveWeir move && move.byMm() < 0;
    }

    /** Does the step; false when people did not follow, and went home. */
    private boolean act(Step step) {
        boolean follows = Dice.of(plan.seed(), "followed", tank.hour()).nextDouble() >= Habits.NOT_FOLLOWED;
        if (step instanceof Step.MoveWeir move) {
            if (follows) {
                move(move.toCrestMm(), move.probe());
            }
            return follows;
        }
        if (step instanceof Step.ServicePart service) {
            if (follows) {
                service.parts().forEach(this::service);
            }
            return follows;
        }
        if (step instanceof Step.MakeSafe safe) {
            makeSafe(safe);
        }
        return true;
    }

    private void move(double toMm, boolean probe) {
        double to = plan.sheet().weir().clampMm(toMm);
        harm.before(to, probe);
        moves++;
        work += Cost.MOVE;
        tank.moveWeir(to);
        write(new WeirMove(now(), to, probe));
    }

    private void service(Part part) {
        if (isNeedless(part)) {
            needless++;
        }
        services++;
        work += Cost.ofService(part);
        tank.service(part);
        write(new Service(now(), part));
    }

    /** Fouled by less than a quarter and, by the keeper's calendar, not due; what was never done is due once. */
    private boolean isNeedless(Part part) {
        if (tank.fouling().of(part) >= 0.25) {
            return false;
        }
        Optional<Instant> last = new Log(new Visit(plan.sheet(), start, new Journal(entries), now())).serviced(part);
        Optional<Integer> days = CarefulKeeper.intervalDays(part);
        return days.isEmpty() || last.isPresent() && LabClock.day(now()) - LabClock.day(last.get()) < days.get() - 0.5;
    }

    /** Sets all that the step says, and notes it as the formats say. */
    private void makeSafe(Step.MakeSafe safe) {
        if (safe.byMm() < 0) {
            move(safe.toCrestMm(), false);
        }
        double rated = plan.sheet().ratedAirLitresPerHour();
        double share = Math.min(1, safe.airLitresPerHour() / rated);
        if (Math.abs(share - tank.airSet()) > SAME_AIR) {
            tank.setAir(share);
            write(new SettingChange(now(), SettingChange.Knob.AIR, share * rated));
        }
        if (safe.how() == SafeWay.START_PUMPS) {
            write(new Happening(now(), Happening.Kind.PUMP_RESTARTED));
        }
    }

    private void write(JournalEntry entry) {
        entries.add(entry);
        trace.ifPresent(each -> each.wrote(tank, entry));
    }

    private Instant now() {
        return LabClock.at(tank.hour());
    }

    private Outcome outcome() {
        Course course = tank.course();
        int end = plan.horizonHours();
        return new Outcome(
                plan.label(),
                Cost.of(course, end, work),
                moves,
                services,
                needless,
                looks,
                extraVisits,
                floodsSeen,
                floodsActedOn,
                harm.count(),
                Cost.inBand(course.mean(end, 24)),
                tank.fouling().over(0.25).size(),
                List.copyOf(told));
    }
}
