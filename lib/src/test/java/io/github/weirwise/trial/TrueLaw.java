package io.github.weirwise.trial;

/**
 * The trial's own steady law: Rehbock weir, Zuber-Findlay holdup, balance of pressure, a law of lives of the unit's own,
 * drainage K e^n with the unit's own n, and bubbles that may merge.
 */
final class TrueLaw {
    static final double LEAST_LOG = -9;
    static final double MOST_LOG = 4.5;
    /** Wetter foam than this streams over. */
    private static final double STREAMING_FRACTION = 0.17;

    private TrueLaw() {}

    /** The steady state with the true crest at a height over the chamber floor. */
    static TruePoint at(TrueUnit unit, double trueCrestMm, Strain strain) {
        var sheet = unit.sheet();
        var column = sheet.column();
        double headMm = headMm(unit, trueCrestMm, strain);
        double outside = trueCrestMm + headMm - column.funnelBaseMm();
        double air = unit.airLitresPerHour() * strain.air * strain.kept / sheet.columns();
        double boreArea = Math.PI * column.boreMm() * column.boreMm() / 4;
        double gasMmPerS = air * 1e6 / 3600 / boreArea;
        double holdup = gasMmPerS / (unit.distribution() * gasMmPerS + unit.driftMmPerS() * strain.rise);
        double level = levelMm(unit, outside, holdup, strain);
        double lip = column.funnelHeightMm() + column.neckHeightMm();
        if (level >= lip) {
            return new TruePoint(headMm, outside, level, air, 1, 0, MOST_LOG, 0.02, true);
        }
        if (air < 0.02 * unit.airLitresPerHour()) {
            return new TruePoint(headMm, outside, level, air, 0, 100, LEAST_LOG, 3, false);
        }
        double life = unit.meanLifeS() * strain.life * Math.pow(strain.air * strain.kept, -unit.airOnLife());
        double heldMl = unit.roomMl(level) * (1 - unit.foamLiquid());
        double fullness = heldMl / (air / 3.6 * life);
        double share = unit.lives().share(fullness);
        return atLip(unit, headMm, outside, level, air, share, fullness);
    }

    private static TruePoint atLip(
            TrueUnit unit, double headMm, double outside, double level, double air, double share, double fullness) {
        if (share <= 0) {
            return new TruePoint(headMm, outside, level, air, 0, fullness, LEAST_LOG, 3, false);
        }
        var column = unit.sheet().column();
        double n = unit.drainageExponent();
        double neckArea = Math.PI * column.neckBoreMm() * column.neckBoreMm() / 4e6;
        double gas = share * air / 3.6e6 / neckArea;
        double drainage = unit.drainage() * Math.pow(fullness / unit.targetFullness(), unit.merging());
        double fraction = Math.pow(gas / (n * drainage), 1 / (n - 1));
        boolean flooded = fraction > STREAMING_FRACTION;
        double wet = Math.min(fraction, STREAMING_FRACTION);
        double liquid = gas * wet * (1 - 1 / n);
        double mlPerDay = liquid * neckArea * 86400e6 * unit.sheet().columns();
        double log = Math.log(mlPerDay / unit.sheet().target().skimmateMlPerDay());
        double gasPerLiquid = gas / liquid / unit.targetGasPerLiquid();
        return new TruePoint(
                headMm,
                outside,
                level,
                air,
                share,
                fullness,
                Math.max(LEAST_LOG, Math.min(MOST_LOG, log)),
                Math.min(3, gasPerLiquid),
                flooded);
    }

    private static double headMm(TrueUnit unit, double trueCrestMm, Strain strain) {
        double flow = unit.flowLitresPerHour() * strain.flow / 3.6e6;
        double width = unit.sheet().weir().widthMm() / 1000;
        double free = TrueWeir.headM(flow, width, trueCrestMm / 1000, unit.discharge());
        return 1000 * TrueWeir.drownedHeadM(free, (strain.beyondMm - trueCrestMm) / 1000);
    }

    /** Clear water outside balances bubbly water, the foam's borne weight and the pressure in the cup. */
    private static double levelMm(TrueUnit unit, double outsideMm, double holdup, Strain strain) {
        var column = unit.sheet().column();
        double opening = column.openingMm() - column.funnelBaseMm();
        double lip = column.funnelHeightMm() + column.neckHeightMm();
        double foam = unit.borneByWater() * unit.foamLiquid();
        return (outsideMm - opening - strain.backPressureMm - foam * lip + (1 - holdup) * opening)
                / (1 - holdup - foam);
    }
}
