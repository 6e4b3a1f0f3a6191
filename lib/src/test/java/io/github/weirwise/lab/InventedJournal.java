package io.github.weirwise.lab;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;

/**
 * The journal that a careful keeper wrote of a hidden tank: an example where no real one is at hand.
 *
 * @param unit the data sheet
 * @param start settings at the start
 * @param journal all entries
 */
public record InventedJournal(SkimmerUnit unit, Settings start, Journal journal) {
    /** Ninety days of truth "slow", a tank of those kept for building. */
    public static InventedJournal of(long number) {
        Plan plan = new PlanDraw(Truth.SLOW, Dice.tankSeed("tune", Truth.SLOW.word(), 0, number)).draw();
        return new InventedJournal(
                plan.sheet(), plan.sheet().ratedSettings(plan.startCrestMm()), Play.journal(plan, Entrant.KEEPER));
    }
}
