package io.github.weirwise.lab;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * What the water does in a play, hour by hour, whatever the keeper does: foaminess that wanders, two feedings a day, and
 * happenings, some of them noted. Every policy on one tank meets the same water.
 */
final class Water {
    private final int firstHour;
    private final double[] foaminess;
    private final double[] passing;
    private final boolean[] powerCut;
    private final List<JournalEntry> notes = new ArrayList<>();
    private final double hourlyMemory;
    private final double fedFall;

    Water(long seed, int firstHour, int lastHour) {
        this.firstHour = firstHour;
        int hours = lastHour - firstHour;
        SplittableRandom dice = Dice.of(seed, "water", 0);
        foaminess = new double[hours];
        passing = new double[hours];
        powerCut = new boolean[hours];
        double deviation = Dice.between(dice, Habits.DRIFT_LOG[0], Habits.DRIFT_LOG[1]);
        hourlyMemory = Math.exp(-1 / (24 * Dice.between(dice, Habits.DRIFT_DAYS[0], Habits.DRIFT_DAYS[1])));
        double kick = deviation * Math.sqrt(1 - hourlyMemory * hourlyMemory);
        double value = deviation * dice.nextGaussian();
        for (int i = 0; i < hours; i++) {
            value = hourlyMemory * value + kick * dice.nextGaussian();
            foaminess[i] = value;
        }
        fedFall = Dice.between(dice, Habits.FED_FALL_LOG[0], Habits.FED_FALL_LOG[1]);
        happenings(dice, hours);
    }

    private void happenings(SplittableRandom dice, int hours) {
        for (int i = 0; i < hours; i++) {
            double each = dice.nextDouble() * 24;
            if (each < Habits.FED_HEAVILY_A_DAY) {
                pulse(i, -Dice.between(dice, 0.6, 1.6), Dice.between(dice, 8, 30));
                pulse(i, 0.35, 70);
                note(dice, i, Happening.Kind.FED_HEAVILY);
            } else if ((each -= Habits.FED_HEAVILY_A_DAY) < Habits.CONDITIONER_A_DAY) {
                pulse(i, Dice.between(dice, 1.2, 3), Dice.between(dice, 20, 50));
                note(dice, i, Happening.Kind.CONDITIONER);
            } else if ((each -= Habits.CONDITIONER_A_DAY) < Habits.HANDS_A_DAY) {
                pulse(i, -Dice.between(dice, 0.4, 1.2), Dice.between(dice, 6, 14));
                note(dice, i, Happening.Kind.HANDS_IN_TANK);
            } else if ((each -= Habits.HANDS_A_DAY) < Habits.DEATH_A_DAY) {
                pulse(i, Dice.between(dice, 0.4, 1.4), Dice.between(dice, 40, 90));
                note(dice, i, Happening.Kind.ANIMAL_DIED);
            } else if ((each -= Habits.DEATH_A_DAY) < Habits.POWER_CUT_A_DAY) {
                powerCut(dice, i);
            }
        }
    }

    private void powerCut(SplittableRandom dice, int at) {
        int back = at + 2 + dice.nextInt(8);
        for (int i = at; i < Math.min(back, powerCut.length); i++) {
            powerCut[i] = true;
        }
        if (back < powerCut.length) {
            pulse(back, Dice.between(dice, 0.3, 1.2), 5);
        }
        boolean noted = dice.nextDouble() < Habits.NOTED;
        if (noted) {
            notes.add(new Happening(LabClock.at(firstHour + at), Happening.Kind.PUMP_STOPPED));
            notes.add(new Happening(LabClock.at(firstHour + back), Happening.Kind.PUMP_RESTARTED));
        }
    }

    private void pulse(int from, double size, double hours) {
        for (int i = from; i < passing.length && i - from < 6 * hours; i++) {
            passing[i] += size * Math.exp(-(i - from) / hours);
        }
    }

    private void note(SplittableRandom dice, int at, Happening.Kind kind) {
        if (dice.nextDouble() < Habits.NOTED) {
            notes.add(new Happening(LabClock.at(firstHour + at), kind));
        }
    }

    double foaminess(int hour) {
        return foaminess[hour - firstHour];
    }

    /** What is to be expected of the foaminess some hours on. */
    double foaminess(int hour, int hoursOn) {
        return foaminess(hour) * Math.pow(hourlyMemory, hoursOn);
    }

    /** What passes by itself, feedings included. */
    double passing(int hour) {
        return passing[hour - firstHour] + fed(hour);
    }

    /** What is to be expected to be left some hours on of what passes now, feedings at their mean. */
    double passing(int hour, int hoursOn) {
        return passing[hour - firstHour] * Math.exp(-hoursOn / 30.0) - 2 * fedFall * Habits.FED_HOURS / 24;
    }

    private double fed(int hour) {
        double fall = 0;
        for (int at : Habits.FED_AT_HOURS) {
            fall += fedFall * Math.exp(-Math.floorMod(hour - at, 24) / Habits.FED_HOURS);
        }
        return -fall;
    }

    boolean powerCut(int hour) {
        return powerCut[hour - firstHour];
    }

    /** Noted happenings from one hour up to another, both included. */
    List<JournalEntry> notes(int fromHour, int toHour) {
        return notes.stream()
                .filter(note ->
                        !note.at().isBefore(LabClock.at(fromHour)) && !note.at().isAfter(LabClock.at(toHour)))
                .toList();
    }
}
