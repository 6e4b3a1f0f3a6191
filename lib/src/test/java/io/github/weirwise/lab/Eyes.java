package io.github.weirwise.lab;

import static io.github.weirwise.unit.Part.ADDITIVES;
import static io.github.weirwise.unit.Part.WATER_SURFACE;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.lab.truth.Response;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** The people who read a hidden tank, each with an eye of their own; every kind of look has an answer. */
final class Eyes {
    private static final String[] NAMES = {"early shift", "late shift"};
    private static final double LEAST_FOR_A_VIAL_ML = 3;

    private final Tank tank;
    private final long seed;
    private final double[] rulerMm = new double[2];
    private final double[] cupFactor = new double[2];
    private final double[] lookBias = new double[2];
    private final double[] darkBias = new double[2];
    private final int[] stepMm = new int[2];
    private int person;

    Eyes(Tank tank) {
        this.tank = tank;
        seed = tank.plan().seed();
        SplittableRandom dice = Dice.of(seed, "eyes", 0);
        for (int i = 0; i < 2; i++) {
            rulerMm[i] = Dice.near(dice, 0, Habits.RULER_BIAS_MM);
            cupFactor[i] = Dice.factor(dice, Habits.CUP_SHARE);
            lookBias[i] = Dice.near(dice, 0, Habits.LOOK_LOG);
            darkBias[i] = Dice.near(dice, 0, Habits.DARK_LOG);
            stepMm[i] = Habits.RULER_STEPS_MM[dice.nextInt(Habits.RULER_STEPS_MM.length)];
        }
    }

    /** The usual reading of a visit; empties the cup. */
    Reading usual() {
        SplittableRandom dice = Dice.of(seed, "usual", tank.hour());
        person = dice.nextDouble() < Habits.SECOND_READER ? 1 : 0;
        boolean misread = dice.nextDouble() < Habits.MISREAD;
        boolean ofLevel = dice.nextBoolean();
        double wrong = dice.nextBoolean() ? 1 : -1;
        double far = dice.nextDouble();
        Response now = tank.now();
        List<Observation> seen = new ArrayList<>(4);
        double levelError = misread && ofLevel ? wrong * (10 + 20 * far) : 0;
        double cupError = misread && !ofLevel ? Math.exp(wrong * (0.7 + 0.7 * far)) : 1;
        Observation level = level(now, Habits.RULER_MM * dice.nextGaussian() + levelError);
        Observation cup = cup(cupError * Math.exp(Habits.CUP_SHARE * dice.nextGaussian()));
        double dark = now.darknessPtCo() * Math.exp(darkBias[person] + Habits.DARK_LOG * dice.nextGaussian());
        Observation look = look(now, dice.nextGaussian());
        if (dice.nextDouble() >= Habits.NO_LEVEL) {
            seen.add(level);
        }
        if (dice.nextDouble() >= Habits.NO_CUP) {
            seen.add(cup);
        }
        if (dice.nextDouble() >= Habits.NO_DARKNESS && tank.cup().ml() >= LEAST_FOR_A_VIAL_ML) {
            seen.add(new Observation.Darkness(DarknessWord.of(dark)));
        }
        if (dice.nextDouble() >= Habits.NO_LOOK) {
            seen.add(look);
        }
        tank.cup().empty();
        return new Reading(LabClock.at(tank.hour()), NAMES[person], seen);
    }

    private Observation level(Response now, double errorMm) {
        double mm = (tank.airOn() ? now.levelMm() : now.outsideMm()) + rulerMm[person] + errorMm;
        return new Observation.FunnelLevel(rounded(mm, stepMm[person], -300, 500));
    }

    private Observation cup(double error) {
        Cup cup = tank.cup();
        double read = cup.full() ? cup.capacityMl() : Math.min(cup.capacityMl(), cup.ml() * cupFactor[person] * error);
        double ml = cup.full() ? read : rounded(read, Habits.CUP_STEP_ML, 0, 100000);
        return new Observation.CupVolume(ml, Math.max(1, cup.hours()), cup.full());
    }

    private Observation look(Response now, double z) {
        return new Observation.FoamLook(word(now, tank.log() + lookBias[person] / 2 + Habits.LOOK_LOG * z));
    }

    private FoamLookWord word(Response now, double log) {
        if (now.streaming() && log > 1.5 || log > 2.5) {
            return FoamLookWord.STREAMING;
        }
        if (log > 0.95) {
            return FoamLookWord.RUNNY;
        }
        if (log > -0.9) {
            return FoamLookWord.CREAMY;
        }
        if (log > -2.2) {
            return FoamLookWord.STIFF;
        }
        return log > -4.5 ? FoamLookWord.LOW_IN_NECK : FoamLookWord.NONE;
    }

    /** One more reading that was asked for; a visit counts as one instant. */
    Reading asked(LookKind what) {
        SplittableRandom dice = Dice.of(seed, what.name(), tank.hour());
        return new Reading(LabClock.at(tank.hour()), NAMES[person], List.of(answer(what, dice)));
    }

    private Observation answer(LookKind what, SplittableRandom dice) {
        if (what.part().isPresent()) {
            return inspection(what.part().get(), dice);
        }
        Response now = tank.now();
        double z = dice.nextGaussian();
        return switch (what.name()) {
            case "FUNNEL_LEVEL" -> level(now, Habits.RULER_MM * z);
            case "CUP_VOLUME" -> cup(1);
            case "DARKNESS" ->
                new Observation.Darkness(
                        DarknessWord.of(now.darknessPtCo() * Math.exp(darkBias[person] + Habits.DARK_LOG * z)));
            case "FOAM_LOOK" -> look(now, z);
            case "HEAD_OVER_CREST" -> new Observation.HeadOverCrest(rounded(now.headMm() + z, 1, 0, 300));
            case "CREST_AGAINST_MARK" ->
                new Observation.CrestAgainstMark(rounded(now.crestMm() - tank.markMm() + z, 1, -100, 100));
            case "OUTSIDE_LEVEL" -> new Observation.OutsideLevel(rounded(now.outsideMm() + 1.2 * z, 1, -500, 500));
            case "AIR_FLOW" -> new Observation.AirFlow(meter(tank.airOn() ? now.airLitresPerHour() : 0, z));
            case "FOAM_COLLAPSE" ->
                new Observation.FoamCollapse(rounded(now.collapseSeconds() * Math.exp(0.2 * z), 1, 1, 36000));
            case "FOAM_CREEP" -> new Observation.FoamCreep(creepMmPerMin(z));
            case "DARKNESS_MATCH" ->
                new Observation.DarknessMatch(
                        rounded(now.darknessPtCo() * Math.exp(darkBias[person] / 2 + 0.2 * z), 10, 0, 100000));
            case "LEVEL_BEYOND_WEIR" -> new Observation.LevelBeyondWeir(rounded(now.beyondMm() + 2 * z, 1, -1000, 300));
            case "RETURN_FLOW" -> new Observation.ReturnFlow(meter(now.flowLitresPerHour(), z));
            case "SALINITY" -> new Observation.Salinity(rounded(now.salinity() + 0.5 * z, 0.5, 0, 42));
            case "WATER_TEMPERATURE" -> new Observation.WaterTemperature(rounded(25 + 0.4 * z, 0.5, 5, 40));
            default -> throw new IllegalStateException(what + " has no answer in the laboratory; give it one here");
        };
    }

    /** Speed of the foam in the neck; a unit's own speed on target and its own exponent, since no truth says them. */
    private double creepMmPerMin(double z) {
        SplittableRandom dice = Dice.of(seed, "creep", 0);
        double onTarget = Habits.CREEP_MM_PER_MIN * Dice.factor(dice, 0.5);
        double power = Dice.between(dice, 0.35, 0.8);
        return rounded(onTarget * Math.exp(power * tank.log() + 0.25 * z), 1, 0, 1000);
    }

    private static double meter(double litresPerHour, double z) {
        return rounded(litresPerHour * Math.exp(0.07 * z), litresPerHour > 500 ? 50 : 5, 0, 20000);
    }

    private Observation inspection(Part part, SplittableRandom dice) {
        double size = tank.fouling().of(part);
        double passing = tank.plan().water().passing(tank.hour());
        if (part == WATER_SURFACE) {
            size = Math.max(size, Math.min(1, -passing / 1.5));
        } else if (part == ADDITIVES) {
            size = Math.max(size, Math.min(1, passing / 2));
        }
        double felt = size + 0.13 * dice.nextGaussian();
        Finding found = felt > 0.5 ? Finding.BAD : felt > 0.25 ? Finding.DOUBTFUL : Finding.GOOD;
        return new Observation.Inspection(part, found);
    }

    private static double rounded(double value, double step, double low, double high) {
        return Math.max(low, Math.min(high, Math.rint(value / step) * step + 0.0));
    }
}
