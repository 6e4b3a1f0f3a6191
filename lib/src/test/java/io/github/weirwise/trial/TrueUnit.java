package io.github.weirwise.trial;

import io.github.weirwise.unit.SkimmerUnit;

/**
 * One unit as it really is; the adviser gets only its data sheet.
 *
 * @param sheet the data sheet
 * @param flowLitresPerHour true flow of a healthy return pump
 * @param airLitresPerHour true air of clean injectors
 * @param crestOffsetMm true crest over what the mark says
 * @param discharge the weir edge's own factor on discharge
 * @param distribution C0 of the drift-flux law eps = j / (C0 j + v) (Zuber and Findlay 1965)
 * @param driftMmPerS its v
 * @param borneByWater share of the foam's weight that rests on the water
 * @param foamLiquid mean liquid fraction of the standing foam
 * @param lives law of lives
 * @param meanLifeS its scale
 * @param airOnLife life goes with air to minus this power
 * @param drainageExponent n of the drainage law K e^n
 * @param drainage its K, m/s, on target
 * @param merging K goes with fullness to this power: older foam is coarser
 * @param targetFullness fullness on target
 * @param targetGasPerLiquid gas over liquid on target
 * @param darknessPtCo darkness on target at the usual load
 * @param darknessExponent darkness goes with gas over liquid to this power
 * @param freeBeyondMm level beyond a free weir over its crest, negative
 * @param practicalSalinity true salinity
 */
record TrueUnit(
        SkimmerUnit sheet,
        double flowLitresPerHour,
        double airLitresPerHour,
        double crestOffsetMm,
        double discharge,
        double distribution,
        double driftMmPerS,
        double borneByWater,
        double foamLiquid,
        LifeTable lives,
        double meanLifeS,
        double airOnLife,
        double drainageExponent,
        double drainage,
        double merging,
        double targetFullness,
        double targetGasPerLiquid,
        double darknessPtCo,
        double darknessExponent,
        double freeBeyondMm,
        double practicalSalinity) {

    /** Room from a level over the funnel base up to the lip, mL. */
    double roomMl(double levelMm) {
        var column = sheet.column();
        double wide = column.boreMm() / 2;
        double narrow = column.neckBoreMm() / 2;
        double neck = Math.PI * narrow * narrow * column.neckHeightMm();
        double height = column.funnelHeightMm();
        double room;
        if (levelMm >= height + column.neckHeightMm()) {
            room = 0;
        } else if (levelMm >= height) {
            room = neck * (1 - (levelMm - height) / column.neckHeightMm());
        } else if (levelMm >= 0) {
            // A cone cut off by its tip: volumes go with the cube of the radius.
            double radius = wide + (narrow - wide) * levelMm / height;
            double cone = Math.PI * height / (3 * (wide - narrow)) * (cube(radius) - cube(narrow));
            room = neck + (wide > narrow ? cone : Math.PI * wide * wide * (height - levelMm));
        } else {
            double cone = Math.PI * height / (3 * Math.max(1e-9, wide - narrow)) * (cube(wide) - cube(narrow));
            room = neck + cone + Math.PI * wide * wide * -levelMm;
        }
        return room / 1000;
    }

    private static double cube(double value) {
        return value * value * value;
    }

    TrueUnit withFoam(LifeTable table, double lifeS, double fullness, double k, double gasPerLiquid) {
        return new TrueUnit(
                sheet,
                flowLitresPerHour,
                airLitresPerHour,
                crestOffsetMm,
                discharge,
                distribution,
                driftMmPerS,
                borneByWater,
                foamLiquid,
                table,
                lifeS,
                airOnLife,
                drainageExponent,
                k,
                merging,
                fullness,
                gasPerLiquid,
                darknessPtCo,
                darknessExponent,
                freeBeyondMm,
                practicalSalinity);
    }
}
