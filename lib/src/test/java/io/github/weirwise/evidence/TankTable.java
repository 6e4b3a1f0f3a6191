package io.github.weirwise.evidence;

import io.github.weirwise.tank.Routine;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankConditions;
import io.github.weirwise.tank.TankEvent;
import io.github.weirwise.tank.TankOutlook;
import io.github.weirwise.tank.TankParameter;
import io.github.weirwise.tank.TankPlan;
import io.github.weirwise.tank.TankSimulator;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Every parameter of the tank with unit, default and source, and what four weeks come to on each default unit. */
final class TankTable {
    private static final double WEEKS = 4;

    private TankTable() {}

    static void run(String[] options) {
        parameters();
        summaries();
        System.out.printf(
                Locale.ROOT,
                "result: parameters=%d assumed=%d%n",
                TankParameter.values().length,
                List.of(TankParameter.values()).stream()
                        .filter(parameter -> parameter.source().startsWith("assumed"))
                        .count());
    }

    private static void parameters() {
        System.out.println("| process | parameter | default | unit | source |\n|---|---|---|---|---|");
        for (TankParameter parameter : TankParameter.values()) {
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %s | %s | %s | %s |%n",
                    parameter.process(),
                    parameter,
                    plain(parameter.byDefault()),
                    parameter.unit(),
                    parameter.source());
        }
        System.out.println();
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }

    private static void summaries() {
        System.out.println("| unit | skimmate L/week | salt g/week | salinity drift a week | organics skimmed g/week "
                + "| organics from feed g/week | organics not in the water g | nitrate avoided g N | skimmable mg/L | nitrate mg N/L "
                + "| neck wash after days |\n|---|---|---|---|---|---|---|---|---|---|---|");
        for (SkimmerUnit unit : FirstRoundUnits.units()) {
            summary(unit);
        }
    }

    private static void summary(SkimmerUnit unit) {
        TankPlan plan = TankScenes.plan(unit);
        TankSimulator simulator = new TankSimulator(plan);
        TankState now = TankScenes.settled(plan);
        double until = now.hours() + 24 * 7 * WEEKS;
        List<TankEvent> events = Routine.USUAL.events(plan, now.hours(), until);
        TankState end = simulator.advance(now, until, events);
        TankOutlook ahead = TankOutlook.of(simulator, now, 7 * WEEKS, events);
        Routine unwashed = new Routine(0, 7, 7, 7, 14, 28, 0, 7, 0.1, 35);
        OptionalDouble neck = TankOutlook.of(simulator, now, 7 * WEEKS, unwashed.events(plan, now.hours(), until))
                .daysUntilNeckWash();
        TankConditions water = TankConditions.of(plan, end);
        System.out.printf(
                Locale.ROOT,
                "| %s | %.2f | %.1f | %.3f | %.2f | %.2f | %.2f | %.3f | %.2f | %.1f | %s |%n",
                unit.name(),
                ahead.summary().skimmateLitresPerWeek(),
                1000 * ahead.summary().saltKgPerWeek(),
                ahead.summary().salinityDriftPerWeek(),
                ahead.summary().organicsSkimmedG() / WEEKS,
                (end.of(Stock.ORGANICS_IN_G) - now.of(Stock.ORGANICS_IN_G)) / WEEKS,
                ahead.organicsLessG(),
                ahead.nitrateAvoidedG(),
                water.skimmableMgPerLitre(),
                water.nitrateMgPerLitre(),
                neck.isPresent() ? String.format(Locale.ROOT, "%.1f", neck.getAsDouble()) : "over 28");
    }
}
