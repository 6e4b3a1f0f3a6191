package io.github.weirwise.practice;

import io.github.weirwise.tank.Feeding;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankEvent;
import io.github.weirwise.tank.TankParameters;
import io.github.weirwise.tank.TankPart;
import io.github.weirwise.tank.TankPlan;
import io.github.weirwise.tank.TankRun;
import io.github.weirwise.tank.TankSimulator;
import io.github.weirwise.tank.TankStart;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.tank.WasteRoute;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The installation of a session at one moment: true tank, what is still to happen, and its course so far. Immutable.
 *
 * @param plan what stands in the room, with the hidden unit
 * @param tank true state
 * @param events all events, past and to come
 * @param lastEmptied when cup or container was last emptied, and the floor wiped
 * @param track true course, about one point an hour
 */
record Bench(TankPlan plan, TankState tank, List<TankEvent> events, Emptied lastEmptied, List<TrackPoint> track) {
    private static final double TRACK_HOURS = 1;
    /** The house fills the top-off reservoir this often, so that it is never the cause of anything. */
    private static final double RESERVOIR_HOURS = 71;

    /** The hour, and what had been spilled by then. */
    record Emptied(double atHours, double spilledLitres) {
        static Emptied now(TankState tank) {
            return new Emptied(tank.hours(), tank.of(Stock.SPILLED_LITRES));
        }
    }

    Bench {
        events = List.copyOf(events);
        track = List.copyOf(track);
    }

    /** The tank where its history begins. */
    static Bench of(Scenario scenario, int seed) {
        ScenarioStart start = scenario.start();
        List<TankEvent> events = new ArrayList<>(
                scenario.events().stream().map(ScenarioEvent::event).toList());
        events.addAll(reservoirFilled(start.beginsAtHour(), start.beginsAtHour(), scenario.endsAtHour()));
        return of(scenario.unit(), scenario.tank(), start, seed).withEvents(events);
    }

    /** The same where nothing is planned to happen. */
    static Bench of(SkimmerUnit told, ScenarioTank tank, ScenarioStart start, int seed) {
        SkimmerUnit unit = told.withTraits(told.traits().livingLonger(tank.foamLifeFactor()));
        TankPlan plan = TankPlan.around(unit, tank.litres())
                .withFeeding(new Feeding(tank.feedGramsPerDay(), tank.weekendFeed()))
                .withParameters(new TankParameters(tank.parameters(), Set.of()))
                .withSeed(seed);
        plan = plan.withBiofilter(plan.biofilter().withDrownedShare(tank.mediaUnderWater()))
                .withWaste(
                        tank.containerLitres() > 0
                                ? WasteRoute.container(tank.containerLitres())
                                : WasteRoute.CUP_ONLY);
        TankState state =
                start.fresh() ? TankStart.fresh(plan, start.settings()) : TankStart.mature(plan, start.settings());
        double begins = start.beginsAtHour();
        TankState first = state.atHours(begins);
        TrackPoint point = TrackPoint.of(plan, new TankSimulator(plan), first);
        return new Bench(plan, first, List.of(), Emptied.now(first), List.of(point));
    }

    /** The house's fillings of the reservoir between two hours, the last hour left out; {@code begins} itself needs none. */
    static List<TankEvent> reservoirFilled(double begins, double fromHours, double untilHours) {
        List<TankEvent> filled = new ArrayList<>();
        double next = Math.max(1, Math.ceil((fromHours - begins) / RESERVOIR_HOURS));
        for (double hour = begins + next * RESERVOIR_HOURS; hour < untilHours; hour += RESERVOIR_HOURS) {
            filled.add(new TankEvent.Serviced(hour, TankPart.RESERVOIR));
        }
        return filled;
    }

    double hours() {
        return tank.hours();
    }

    TankSimulator simulator() {
        return new TankSimulator(plan);
    }

    /** The tank at a later hour. */
    Bench advanced(double untilHours) {
        if (!(untilHours > hours())) {
            return this;
        }
        TankSimulator simulator = simulator();
        TankRun run = simulator.run(tank, untilHours, events, TRACK_HOURS);
        List<TrackPoint> course = new ArrayList<>(track);
        for (TankState each : run.samples()) {
            if (each.hours() < untilHours) {
                course.add(TrackPoint.of(plan, simulator, each));
            }
        }
        course.add(TrackPoint.of(plan, simulator, run.end()));
        return new Bench(plan, run.end(), events, lastEmptied, course);
    }

    /** The same with more to happen. */
    Bench withEvents(List<TankEvent> more) {
        List<TankEvent> all = new ArrayList<>(events);
        all.addAll(more);
        return new Bench(plan, tank, all, lastEmptied, track);
    }

    /** The same moment with everything done that happens now; what is past is forgotten. */
    Bench atOnce() {
        List<TankEvent> now =
                events.stream().filter(event -> event.atHours() == hours()).toList();
        List<TankEvent> later =
                events.stream().filter(event -> event.atHours() > hours()).toList();
        return new Bench(plan, simulator().done(tank, now), later, lastEmptied, track);
    }

    /** The same with cup or container emptied at this moment. */
    Bench emptied() {
        Bench noted = new Bench(plan, tank, events, Emptied.now(tank), track);
        return noted.withEvents(
                List.of(new TankEvent.Serviced(hours(), plan.waste().drained() ? TankPart.CONTAINER : TankPart.CUP)));
    }

    Bench withPlan(TankPlan other) {
        return new Bench(other, tank, events, lastEmptied, track);
    }

    /** What the device sees now, hidden truth included. */
    Settings settings() {
        return simulator().settings(tank);
    }

    /** What lies on the floor: who empties the cup wipes up. */
    double spilledLitres() {
        return tank.of(Stock.SPILLED_LITRES) - lastEmptied.spilledLitres();
    }

    OperatingPoint point() {
        return simulator().operatingPoint(tank);
    }
}
