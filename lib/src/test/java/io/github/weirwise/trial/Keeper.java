package io.github.weirwise.trial;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** Reads a hidden tank as a person does: a ruler in bubbly water with a bias of their own, a cup, a vial, a glance. */
final class Keeper {
    private static final String[] PEOPLE = {"early shift", "late shift"};
    private static final double LEAST_FOR_A_VIAL_ML = 3;

    private final HiddenTank tank;
    private final long seed;
    private final double noise;
    private final double[] rulerBiasMm = new double[PEOPLE.length];
    private final LookAround looks;
    private boolean misread;

    Keeper(HiddenTank tank) {
        this.tank = tank;
        seed = tank.plan().seed();
        noise = tank.plan().hardship().noise();
        SplittableRandom people = Dice.of(seed, "people", 0);
        for (int i = 0; i < rulerBiasMm.length; i++) {
            rulerBiasMm[i] = Dice.normalWithin(people, 0, 1.3, 2);
        }
        looks = new LookAround(tank);
    }

    /** The routine reading of a visit; empties the cup. */
    Reading routine() {
        SplittableRandom dice = Dice.of(seed, "routine", tank.hour());
        int person = dice.nextInt(4) == 0 ? 1 : 0;
        double slip = misreadFactor(dice);
        List<Observation> seen = new ArrayList<>();
        double level = tank.steadyNow().levelMm() + rulerBiasMm[person] + noise * Dice.normal(dice, 0, 1.4);
        seen.add(new Observation.FunnelLevel(rounded(level + levelError(slip), 1)));
        seen.add(cup(dice, slip));
        darkness(dice).ifPresent(seen::add);
        seen.add(new Observation.FoamLook(look(dice)));
        tank.cup().empty(tank.hour());
        return new Reading(TrialClock.at(tank.hour()), PEOPLE[person], seen);
    }

    /** One more reading that was asked for; a visit counts as one instant. */
    Reading look(LookKind what) {
        SplittableRandom dice = Dice.of(seed, what.name(), tank.hour());
        List<Observation> seen =
                looks.at(what, dice, rulerBiasMm[0]).map(List::of).orElse(List.of());
        return new Reading(TrialClock.at(tank.hour()), PEOPLE[0], seen);
    }

    /** Whether the newest routine reading was grossly wrong. */
    boolean misread() {
        return misread;
    }

    /** 0 for an honest reading, else which way it is wrong: under a half the level, over it the cup. */
    private double misreadFactor(SplittableRandom dice) {
        boolean first = tank.hour() == 0 && tank.plan().misreadAtStart();
        misread = first || dice.nextDouble() < tank.plan().hardship().misreports();
        double way = Dice.between(dice, 0.001, 1);
        return misread ? way : 0;
    }

    private static double levelError(double way) {
        if (way == 0 || way > 0.5) {
            return 0;
        }
        return way < 0.25 ? -10 - 40 * way : 10 + 40 * (way - 0.25);
    }

    private Observation.CupVolume cup(SplittableRandom dice, double way) {
        double factor = way > 0.75 ? 0.2 : way > 0.5 ? 4 : 1;
        double read =
                tank.cup().ml() * factor * (1 + noise * Dice.normal(dice, 0, 0.08)) + noise * Dice.normal(dice, 0, 1);
        double capacity = tank.plan().unit().sheet().cupMl();
        boolean full = tank.cup().ranOver() || tank.cup().ml() > 0.98 * capacity;
        double ml = full ? capacity : Math.max(0, Math.min(capacity, rounded(read, 1)));
        return new Observation.CupVolume(
                ml, Math.max(1, tank.hour() - tank.cup().emptiedHour()), full);
    }

    private Optional<Observation> darkness(SplittableRandom dice) {
        double seen = tank.cup().darknessPtCo() * Math.exp(noise * Dice.normal(dice, 0, 0.25));
        if (tank.cup().ml() < LEAST_FOR_A_VIAL_ML) {
            return Optional.empty();
        }
        return Optional.of(new Observation.Darkness(DarknessWord.of(seen)));
    }

    private FoamLookWord look(SplittableRandom dice) {
        double log = Math.log(tank.amountNow()) + noise * Dice.normal(dice, 0, 0.35);
        if (tank.steadyNow().flooded() && log > 1 || log > 2.4) {
            return FoamLookWord.STREAMING;
        }
        if (log > 0.9) {
            return FoamLookWord.RUNNY;
        }
        if (log > -0.6) {
            return FoamLookWord.CREAMY;
        }
        if (log > -1.9) {
            return FoamLookWord.STIFF;
        }
        return log > -4.5 ? FoamLookWord.LOW_IN_NECK : FoamLookWord.NONE;
    }

    private static double rounded(double value, double to) {
        return Math.round(value / to) * to;
    }
}
