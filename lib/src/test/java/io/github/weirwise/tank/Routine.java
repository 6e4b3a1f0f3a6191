package io.github.weirwise.tank;

import io.github.weirwise.report.Require;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A keeper's regular work, as events. Intervals of the usual routine are common practice; zero leaves a task out.
 *
 * @param neckDays days between washing neck and cup, 0 to 3650
 * @param containerDays days between emptying the container
 * @param reservoirDays days between filling the top-off reservoir
 * @param padDays days between rinsing the pad
 * @param airLineDays days between rinsing the air line
 * @param pumpDays days between cleaning nozzle and strainer
 * @param impellerDays days between new impellers of the injector pump
 * @param waterChangeDays days between water changes
 * @param waterChangeShare share of the water changed each time, 0 to 0.9
 * @param newWaterSalinity practical salinity of the new water, 0 to 42
 * @since 0.1
 */
public record Routine(
        double neckDays,
        double containerDays,
        double reservoirDays,
        double padDays,
        double airLineDays,
        double pumpDays,
        double impellerDays,
        double waterChangeDays,
        double waterChangeShare,
        double newWaterSalinity) {
    /** Nothing is done. */
    public static final Routine NONE = new Routine(0, 0, 0, 0, 0, 0, 0, 0, 0, 35);
    /** Weekly round, fortnightly air line, monthly pumps, yearly impeller, a tenth of the water a week. */
    public static final Routine USUAL = new Routine(7, 7, 7, 7, 14, 28, 364, 7, 0.1, 35);

    private static final double ROUND_HOUR = 10;

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if an interval or the water is out of its range
     */
    public Routine {
        requireDays("neckDays", neckDays);
        requireDays("containerDays", containerDays);
        requireDays("reservoirDays", reservoirDays);
        requireDays("padDays", padDays);
        requireDays("airLineDays", airLineDays);
        requireDays("pumpDays", pumpDays);
        requireDays("impellerDays", impellerDays);
        requireDays("waterChangeDays", waterChangeDays);
        String fix = "give the new water";
        Require.inRange("waterChangeShare", waterChangeShare, 0, 0.9, "", fix);
        Require.inRange("newWaterSalinity", newWaterSalinity, 0, 42, "", fix);
    }

    private static void requireDays(String name, double days) {
        Require.inRange(name, days, 0, 3650, "days", "give days between two times, 0 for never");
    }

    /** The same routine without water changes. */
    public Routine withoutWaterChanges() {
        return new Routine(
                neckDays,
                containerDays,
                reservoirDays,
                padDays,
                airLineDays,
                pumpDays,
                impellerDays,
                0,
                waterChangeShare,
                newWaterSalinity);
    }

    /**
     * The work between two hours, at ten in the morning of the days due, in order. Days count from the clock's start.
     *
     * @param plan whose tank
     * @param fromHours first hour
     * @param untilHours end, not included
     */
    public List<TankEvent> events(TankPlan plan, double fromHours, double untilHours) {
        List<TankEvent> events = new ArrayList<>();
        services(events, neckDays, TankPart.NECK, fromHours, untilHours);
        services(events, containerDays, TankPart.CONTAINER, fromHours, untilHours);
        services(events, reservoirDays, TankPart.RESERVOIR, fromHours, untilHours);
        services(events, padDays, TankPart.PAD, fromHours, untilHours);
        services(events, airLineDays, TankPart.AIR_LINE, fromHours, untilHours);
        services(events, pumpDays, TankPart.NOZZLE, fromHours, untilHours);
        services(events, pumpDays, TankPart.STRAINER, fromHours, untilHours);
        services(events, impellerDays, TankPart.INJECTOR_PUMP, fromHours, untilHours);
        double litres = waterChangeShare * plan.body().runningLitres();
        for (double at : due(waterChangeDays, fromHours, untilHours)) {
            events.add(new TankEvent.WaterChanged(at, litres, newWaterSalinity));
        }
        events.sort(Comparator.comparingDouble(TankEvent::atHours));
        return List.copyOf(events);
    }

    private static void services(List<TankEvent> events, double days, TankPart part, double from, double until) {
        for (double at : due(days, from, until)) {
            events.add(new TankEvent.Serviced(at, part));
        }
    }

    private static List<Double> due(double days, double from, double until) {
        List<Double> hours = new ArrayList<>();
        if (days > 0) {
            double every = 24 * days;
            double first = Math.max(1, Math.ceil((from - ROUND_HOUR) / every));
            for (double at = first * every + ROUND_HOUR; at < until; at += every) {
                hours.add(at);
            }
        }
        return hours;
    }
}
