package io.github.weirwise.trial;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.unit.Part;
import java.util.Optional;
import java.util.SplittableRandom;

/** Answers the readings that a policy asks for, from the truth with noise. */
final class LookAround {
    private final HiddenTank tank;
    private final double noise;

    LookAround(HiddenTank tank) {
        this.tank = tank;
        noise = tank.plan().hardship().noise();
    }

    Optional<Observation> at(LookKind what, SplittableRandom dice, double biasMm) {
        TruePoint point = tank.steadyNow();
        TrueUnit unit = tank.plan().unit();
        Strain strain = tank.truth().strain(tank.hour(), each -> true);
        double z = noise * dice.nextGaussian();
        Observation seen = switch (what) {
            case FUNNEL_LEVEL -> new Observation.FunnelLevel(Math.rint(point.levelMm() + biasMm + 1.4 * z));
            case HEAD_OVER_CREST -> new Observation.HeadOverCrest(Math.max(0, halves(point.headMm() + 0.8 * z)));
            case CREST_AGAINST_MARK ->
                new Observation.CrestAgainstMark(
                        halves(unit.crestOffsetMm() + strain.slipMm + tank.landedCrestMm() - tank.crestMm() + 0.8 * z));
            case OUTSIDE_LEVEL -> new Observation.OutsideLevel(halves(point.outsideMm() + 0.8 * z));
            case AIR_FLOW ->
                new Observation.AirFlow(Math.max(0, unit.airLitresPerHour() * strain.air * (1 + 0.06 * z)));
            case FOAM_COLLAPSE -> new Observation.FoamCollapse(collapse(unit, point, strain, z));
            case LEVEL_BEYOND_WEIR -> new Observation.LevelBeyondWeir(Math.rint(beyond(unit, strain) + 2 * z));
            case RETURN_FLOW ->
                new Observation.ReturnFlow(Math.max(0, unit.flowLitresPerHour() * strain.flow * (1 + 0.06 * z)));
            case SALINITY -> new Observation.Salinity(unit.practicalSalinity() + strain.salinityShift + 0.7 * z);
            case AIR_LINE -> inspected(Part.AIR_LINE, 1, dice);
            case INJECTOR_PUMP -> inspected(Part.INJECTOR_PUMP, 0.75, dice);
            case INJECTOR_NOZZLE -> inspected(Part.INJECTOR_NOZZLE, 0.9, dice);
            case NECK_AND_CUP -> inspected(Part.NECK_AND_CUP, 1, dice);
            case CUP_VENT -> inspected(Part.CUP_VENT, 0.95, dice);
            case SEATING -> inspected(Part.SEATING, 0.85, dice);
            case FILTER_PAD -> inspected(Part.FILTER_PAD, 1, dice);
            case RETURN_PUMP -> inspected(Part.RETURN_PUMP, 0.8, dice);
            case RETURN_WATER -> inspected(Part.RETURN_WATER, 0.95, dice);
            case WATER_SURFACE -> finding(Part.WATER_SURFACE, strength(HiddenCause.FILM), 0.85, dice);
            case ADDITIVES -> finding(Part.ADDITIVES, additives(), 0.9, dice);
            case DARKNESS ->
                new Observation.Darkness(
                        DarknessWord.of(tank.truth().darkness(tank.hour(), point.gasPerLiquid()) * Math.exp(0.25 * z)));
            // The cup was emptied a moment ago and the foam has just been looked at.
            case CUP_VOLUME, FOAM_LOOK -> null;
        };
        return Optional.ofNullable(seen);
    }

    private double collapse(TrueUnit unit, TruePoint point, Strain strain, double z) {
        double seconds = unit.lives().collapse(point.share()) * unit.meanLifeS() * strain.life;
        return Math.max(1, Math.min(36000, seconds * Math.exp(0.15 * z)));
    }

    private double beyond(TrueUnit unit, Strain strain) {
        double trueCrest = tank.landedCrestMm() + unit.crestOffsetMm() + strain.slipMm;
        return Math.max(unit.freeBeyondMm(), strain.beyondMm - trueCrest);
    }

    private double additives() {
        return Math.max(strength(HiddenCause.AGENT), strength(HiddenCause.MEDICINE));
    }

    private double strength(HiddenCause kind) {
        return tank.ailments().stream()
                .filter(each -> each.kind() == kind)
                .mapToDouble(each -> each.size(tank.hour()))
                .max()
                .orElse(0);
    }

    private Observation inspected(Part part, double clarity, SplittableRandom dice) {
        double worst = tank.ailments().stream()
                .filter(each -> each.kind().part().filter(part::equals).isPresent())
                .mapToDouble(each -> each.size(tank.hour()))
                .max()
                .orElse(0);
        return finding(part, worst, clarity, dice);
    }

    /** A sound part is called sound nine times in ten; a fault of a quarter is called bad every third time. */
    private Observation finding(Part part, double size, double clarity, SplittableRandom dice) {
        double good;
        double bad;
        if (size < 0.05) {
            good = 0.9;
            bad = 0.015;
        } else {
            good = Math.max(0.03, 0.75 - 1.8 * size) / clarity;
            bad = Math.min(0.88, 0.1 + 1.1 * size) * clarity;
        }
        double at = dice.nextDouble();
        Finding found = at < bad ? Finding.BAD : at < 1 - good ? Finding.DOUBTFUL : Finding.GOOD;
        return new Observation.Inspection(part, found);
    }

    private static double halves(double mm) {
        return Math.rint(mm * 2) / 2 + 0.0;
    }
}
