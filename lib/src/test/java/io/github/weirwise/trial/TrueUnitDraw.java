package io.github.weirwise.trial;

import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * Draws a true unit around a data sheet, so that a healthy one gives its target's amount with the column's level a few
 * millimetres from where the sheet says, and answers to the weir as calmly or steeply as drawn.
 */
final class TrueUnitDraw {
    private static final List<SkimmerUnit> SHEETS = LanternQuay.units();
    private static final double USUAL_STEEPNESS = 10;

    private final RandomGenerator random;
    private final Hardship hardship;

    TrueUnitDraw(RandomGenerator random, Hardship hardship) {
        this.random = random;
        this.hardship = hardship;
    }

    TrueUnit draw() {
        SkimmerUnit sheet = SHEETS.get(random.nextInt(SHEETS.size()));
        double exponent = Dice.between(random, 1.75, 2.9);
        double merging = random.nextDouble() < 0.35 ? Dice.between(random, 0.4, 1.6) : 0;
        TrueUnit body = new TrueUnit(
                sheet,
                sheet.ratedFlowLitresPerHour() * Dice.factor(random, 0.04),
                sheet.ratedAirLitresPerHour() * Dice.factor(random, 0.07),
                Dice.normalWithin(random, 0, 1, 2),
                Dice.factor(random, 0.04),
                Dice.between(random, 1.0, 1.4),
                105 * Dice.factor(random, 0.15),
                Dice.between(random, 0, 0.25),
                Dice.between(random, 0.05, 0.16),
                null,
                1,
                Dice.between(random, 0, 0.5),
                exponent,
                1,
                merging,
                1,
                1,
                1750 * Dice.factor(random, 0.28),
                Dice.between(random, 0.6, 1.0),
                -Dice.between(random, 20, 60),
                Dice.normalWithin(random, 35, 0.6, 2));
        return foamed(body);
    }

    /** Settles the foam: first what arrives on target, then the law of lives that makes it arrive so steeply. */
    private TrueUnit foamed(TrueUnit body) {
        var sheet = body.sheet();
        double n = body.drainageExponent();
        double neckRadius = sheet.column().neckBoreMm() / 2000;
        double neckArea = Math.PI * neckRadius * neckRadius;
        double liquid = sheet.target().skimmateMlPerDay() / 86400e6 / sheet.columns() / neckArea;
        double fraction = 0.006 * Dice.factor(random, 0.3);
        double gas = liquid / (fraction * (1 - 1 / n));
        double airPerColumn = body.airLitresPerHour() / sheet.columns();
        double share = gas * neckArea * 3.6e6 / airPerColumn;
        double steepness = Math.max(5, Math.min(17, USUAL_STEEPNESS * Dice.factor(random, 0.28))) * hardship.response();
        LifeLaw[] laws = LifeLaw.values();
        LifeLaw law = laws[random.nextInt(laws.length)];
        double wanted = (steepness - body.merging() / (n - 1)) * (n - 1) / n;
        LifeTable table = LifeTable.withSteepness(law, share, wanted);
        double fullness = table.fullness(share);
        double levelMm = sheet.target().submergenceMm() + Dice.normalWithin(random, 0, 4.5, 2);
        double life = body.roomMl(levelMm) * (1 - body.foamLiquid()) / (airPerColumn / 3.6 * fullness);
        double drainage = gas / (n * Math.pow(fraction, n - 1));
        return body.withFoam(table, life, fullness, drainage, gas / liquid);
    }
}
