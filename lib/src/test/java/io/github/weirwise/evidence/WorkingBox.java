package io.github.weirwise.evidence;

import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.FoamTraits;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyInputs;
import io.github.weirwise.unit.SteadyLaw;
import io.github.weirwise.unit.Target;
import io.github.weirwise.unit.WeirSetting;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;

/**
 * Seeded draws from the box in which skimmers work. Neck and bubbles belong to a unit, so each case has its own and every form
 * of the law gets its own mean life, the one with which that form gives the wanted amount at the case's first setting: the
 * anchor. Then level, air and life move away from the anchor, for all forms by the same.
 */
final class WorkingBox {
    /** How far the weir moves either way, mm. */
    static final double WEIR_MM = 6;
    /** How far air and life move either way, as a share. */
    static final double AIR_SHARE = 0.12;

    static final double LIFE_SHARE = 0.10;

    private final Random random;

    WorkingBox(long seed) {
        random = new Random(seed);
    }

    /**
     * A unit with its neck and bubbles, its life fitted for the fast form at the anchor.
     *
     * @param anchor settings at which it gives the wanted amount
     * @param moved settings away from there
     * @param lifeFactor mean life away from there, as a multiple of the fitted one
     */
    record Case(SkimmerUnit unit, Settings anchor, Settings moved, double lifeFactor) {
        /** The same unit with a mean life fitted for another form, moved as this one. */
        SkimmerUnit moved(SkimmerUnit fitted) {
            return fitted.withTraits(fitted.traits()
                    .withMeanLifeSeconds(lifeFactor * fitted.traits().meanLifeSeconds()));
        }
    }

    Case next() {
        while (true) {
            SkimmerUnit unit = unit();
            OptionalDouble crest = WeirSetting.crestForSubmergence(
                    unit, unit.ratedSettings(200), unit.target().submergenceMm());
            if (crest.isPresent()) {
                Settings anchor = unit.ratedSettings(crest.getAsDouble());
                Settings moved = anchor.withWeirCrestMm(anchor.weirCrestMm() + within(WEIR_MM))
                        .withAirLitresPerHour(anchor.airLitresPerHour() * (1 + within(AIR_SHARE)));
                return new Case(fitted(unit, anchor), anchor, moved, 1 + within(LIFE_SHARE));
            }
        }
    }

    private SkimmerUnit unit() {
        SkimmerUnit base = FirstRoundUnits.units().get(random.nextInt(3));
        Column column = base.column();
        FoamTraits usual = base.traits();
        Column other = new Column(
                column.boreMm(),
                column.openingMm(),
                column.funnelBaseMm(),
                column.funnelHeightMm(),
                column.neckBoreMm() * between(0.85, 1.2),
                column.neckHeightMm() * between(0.7, 1.4));
        FoamTraits traits = new FoamTraits(
                usual.meanLifeSeconds(),
                usual.lifeShape(),
                between(0.6, 1.0),
                between(1.6, 3.0),
                usual.filmMobility(),
                usual.drainageExponent(),
                usual.holdupExponent(),
                usual.meanFoamLiquidFraction(),
                usual.weightOnWater(),
                usual.columnFeedShare(),
                java.util.Optional.empty());
        return new SkimmerUnit(
                base.name(),
                base.columns(),
                other,
                base.weir(),
                base.cupMl(),
                base.cupDrainLitresPerHour(),
                base.ratedFlowLitresPerHour(),
                base.ratedAirLitresPerHour(),
                traits,
                new Target(
                        base.target().submergenceMm() + within(5),
                        base.target().skimmateMlPerDay(),
                        base.target().darknessPtCo()),
                base.layout());
    }

    /** The unit with the mean life at which the fast form gives its target's amount; the amount rises with it. */
    static SkimmerUnit fitted(SkimmerUnit unit, Settings anchor) {
        SteadyLaw law = new SteadyLaw(unit);
        SteadyInputs inputs = SteadyInputs.of(unit, anchor);
        double wanted = unit.target().skimmateMlPerDay() / (86400e6);
        double low = 1;
        double high = 600;
        while (high - low > 1e-10 * high) {
            double middle = 0.5 * (low + high);
            if (law.at(inputs.withMeanLifeS(middle)).skimmateM3PerS() < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return unit.withTraits(unit.traits().withMeanLifeSeconds(high));
    }

    /** Skimmate of the fast form, mL/day. */
    static double fast(SkimmerUnit unit, Settings settings) {
        return new SteadyLaw(unit).at(SteadyInputs.of(unit, settings)).skimmateM3PerS() * 86400e6;
    }

    static List<SkimmerUnit> defaults() {
        return FirstRoundUnits.units().stream()
                .map(unit -> fitted(unit, anchor(unit)))
                .toList();
    }

    /** The rated settings at which a unit stands at its target's submergence. */
    static Settings anchor(SkimmerUnit unit) {
        double crest = WeirSetting.crestForSubmergence(
                        unit, unit.ratedSettings(200), unit.target().submergenceMm())
                .orElseThrow();
        return unit.ratedSettings(crest);
    }

    private double within(double either) {
        return either * (2 * random.nextDouble() - 1);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
