package io.github.weirwise.evidence;

import io.github.weirwise.tank.TankBalance;
import io.github.weirwise.tank.TankPlan;
import io.github.weirwise.tank.TankSimulator;
import io.github.weirwise.tank.TankStart;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.Locale;

/** A year of usual keeping on each default unit: how well water, salt, nitrogen and organics close. */
final class Balance {
    private Balance() {}

    static void run(String[] options) {
        double water = 0;
        double salt = 0;
        double nitrogen = 0;
        double organics = 0;
        System.out.println(
                "unit                      water      salt   nitrogen  organics   (relative to the stock, one year)");
        for (SkimmerUnit unit : FirstRoundUnits.units()) {
            TankPlan plan = TankScenes.plan(unit);
            TankState before = TankStart.mature(plan, TankScenes.onTarget(unit));
            TankState after =
                    new TankSimulator(plan).advance(before, TankScenes.YEAR_HOURS, TankScenes.usualYear(plan));
            TankBalance balance = TankBalance.between(plan, before, after);
            System.out.printf(
                    Locale.ROOT,
                    "%-22s %9.1e %9.1e %9.1e %9.1e%n",
                    unit.name(),
                    balance.waterError(),
                    balance.saltError(),
                    balance.nitrogenError(),
                    balance.organicsError());
            water = Math.max(water, balance.waterError());
            salt = Math.max(salt, balance.saltError());
            nitrogen = Math.max(nitrogen, balance.nitrogenError());
            organics = Math.max(organics, balance.organicsError());
        }
        System.out.printf(
                Locale.ROOT,
                "result: waterError=%.2e saltError=%.2e nitrogenError=%.2e organicsError=%.2e%n",
                water,
                salt,
                nitrogen,
                organics);
    }
}
