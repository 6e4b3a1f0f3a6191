package io.github.weirwise.tank;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.SkimmerUnit;

/**
 * What stands in the room and how its processes run: everything about a tank that does not change by itself. Immutable.
 *
 * @param unit the skimmer
 * @param body water volumes
 * @param feeding rhythm of meals
 * @param biofilter the wet-dry side
 * @param waste where skimmate goes
 * @param parameters numbers of the processes
 * @param seed seed of the load's noise; the only random thing here
 */
public record TankPlan(
        SkimmerUnit unit,
        TankBody body,
        Feeding feeding,
        Biofilter biofilter,
        WasteRoute waste,
        TankParameters parameters,
        long seed) {
    private static final Limit LITRES = Limit.of("litres", 40, 1e5, Unit.LITRE, "tank.try.giveTheWaterOf");

    private static final double FEED_GRAMS_PER_LITRE = 0.006;

    /**
     * A usual installation around a unit, with everything in proportion to the water (assumed): a seventh of it in the
     * sump, 25 cm2 of surface and 250 cm2 of media a litre, 6 mg of feed a litre and day, a reservoir of a tenth.
     *
     * @param unit the skimmer
     * @param litres all water at running level, 40 to 1e5 L
     * @throws io.github.weirwise.report.OutOfRangeException if the volume is out of its range
     */
    public static TankPlan around(SkimmerUnit unit, double litres) {
        LITRES.check(litres);
        double sump = litres / 7;
        TankBody body =
                new TankBody(litres - sump, sump, 1.6 * sump, 0.3 * sump, 0.3 * sump, 0.0025 * litres, 0.1 * litres);
        double padLevelMm = unit.weir().lowestCrestMm() - 20;
        Biofilter biofilter = new Biofilter(
                0.025 * litres, 0.3, litres / 6000, padLevelMm, unit.weir().highestCrestMm() + 5);
        return new TankPlan(
                unit,
                body,
                new Feeding(FEED_GRAMS_PER_LITRE * litres, 1),
                biofilter,
                WasteRoute.container(Math.max(2, unit.cupMl() / 100)),
                TankParameters.DEFAULT,
                1);
    }

    /** The same plan with other volumes. */
    public TankPlan withBody(TankBody other) {
        return new TankPlan(unit, other, feeding, biofilter, waste, parameters, seed);
    }

    /** The same plan with another rhythm of meals. */
    public TankPlan withFeeding(Feeding other) {
        return new TankPlan(unit, body, other, biofilter, waste, parameters, seed);
    }

    /** The same plan with another biofilter. */
    public TankPlan withBiofilter(Biofilter other) {
        return new TankPlan(unit, body, feeding, other, waste, parameters, seed);
    }

    /** The same plan with another route for skimmate. */
    public TankPlan withWaste(WasteRoute other) {
        return new TankPlan(unit, body, feeding, biofilter, other, parameters, seed);
    }

    /** The same plan with other parameters. */
    public TankPlan withParameters(TankParameters other) {
        return new TankPlan(unit, body, feeding, biofilter, waste, other, seed);
    }

    /** The same plan with another seed. */
    public TankPlan withSeed(long other) {
        return new TankPlan(unit, body, feeding, biofilter, waste, parameters, other);
    }
}
