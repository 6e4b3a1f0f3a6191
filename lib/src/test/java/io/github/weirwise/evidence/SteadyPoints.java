package io.github.weirwise.evidence;

import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.FoamTraits;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyInputs;
import io.github.weirwise.unit.SteadyLaw;
import io.github.weirwise.unit.SteadyPoint;
import io.github.weirwise.unit.WeirSetting;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;

/**
 * Seeded points of the steady law for the benchmarks, and the same as a file of doubles for the programs in other languages.
 */
public final class SteadyPoints {
    /** Points in a set. */
    public static final int POINTS = 4096;

    private static final int UNITS = 64;
    /** Numbers of a point in the answers' file. */
    static final int ANSWERS = 13;

    private final List<SkimmerUnit> units = new ArrayList<>();
    private final SteadyLaw[] laws = new SteadyLaw[UNITS];
    private final int[] lawOf = new int[POINTS];
    private final SteadyInputs[] inputs = new SteadyInputs[POINTS];

    private SteadyPoints(boolean generalExponents) {
        Random random = new Random(1);
        while (units.size() < UNITS) {
            SkimmerUnit unit = unit(random, generalExponents);
            if (crest(unit).isPresent()) {
                SkimmerUnit fitted =
                        WorkingBox.fitted(unit, unit.ratedSettings(crest(unit).getAsDouble()));
                laws[units.size()] = new SteadyLaw(fitted);
                units.add(fitted);
            }
        }
        for (int i = 0; i < POINTS; i++) {
            lawOf[i] = random.nextInt(UNITS);
            inputs[i] = inputs(random, units.get(lawOf[i]));
        }
    }

    /** Units with holdup exponents 1.6 to 3, drainage exponents 1.5 to 3, some flow down through the column, some foam's weight. */
    public static SteadyPoints general() {
        return new SteadyPoints(true);
    }

    /** Units with both exponents 2 and no flow through the column, for which roots have closed or quicker forms. */
    public static SteadyPoints usual() {
        return new SteadyPoints(false);
    }

    /** The law of a point. */
    public SteadyLaw law(int point) {
        return laws[lawOf[point]];
    }

    /** The inputs of a point. */
    public SteadyInputs inputs(int point) {
        return inputs[point];
    }

    private static OptionalDouble crest(SkimmerUnit unit) {
        return WeirSetting.crestForSubmergence(
                unit, unit.ratedSettings(200), unit.target().submergenceMm());
    }

    private static SkimmerUnit unit(Random random, boolean general) {
        SkimmerUnit base = FirstRoundUnits.units().get(random.nextInt(3));
        Column usual = base.column();
        Column column = new Column(
                usual.boreMm(),
                usual.openingMm(),
                usual.funnelBaseMm(),
                usual.funnelHeightMm(),
                usual.neckBoreMm() * between(random, 0.85, 1.2),
                usual.neckHeightMm() * between(random, 0.7, 1.4));
        FoamTraits traits = new FoamTraits(
                24,
                between(random, 1.1, 1.6),
                between(random, 0.7, 1.0),
                between(random, 1.6, 3),
                between(random, 0.002, 0.008),
                general ? between(random, 1.5, 3) : 2,
                general ? between(random, 1.6, 3) : 2,
                0.1,
                general ? between(random, 0, 0.3) : 0,
                general ? between(random, 0, 0.02) : 0,
                java.util.Optional.empty());
        return new SkimmerUnit(
                base.name(),
                base.columns(),
                column,
                base.weir(),
                base.cupMl(),
                base.cupDrainLitresPerHour(),
                base.ratedFlowLitresPerHour(),
                base.ratedAirLitresPerHour(),
                traits,
                base.target(),
                base.layout());
    }

    private static SteadyInputs inputs(Random random, SkimmerUnit unit) {
        Condition condition = Condition.REFERENCE
                .withSkimmableMgPerLitre(between(random, 1.5, 3))
                .withBackPressurePa(between(random, 0, 10));
        Settings settings = unit.ratedSettings(crest(unit).orElseThrow() + between(random, -6, 8))
                .withFlowLitresPerHour(unit.ratedFlowLitresPerHour() * between(random, 0.9, 1.1))
                .withAirLitresPerHour(unit.ratedAirLitresPerHour() * between(random, 0.97, 1.1))
                .withCondition(condition);
        return SteadyInputs.of(unit, settings);
    }

    private static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** Counts of laws and points, 13 numbers a law, 11 a point, in this machine's byte order. */
    void write(Path file) throws IOException {
        ByteBuffer buffer =
                ByteBuffer.allocate(8 * (2 + 13 * UNITS + 11 * POINTS)).order(ByteOrder.nativeOrder());
        buffer.putDouble(UNITS).putDouble(POINTS);
        units.forEach(unit -> put(buffer, unit));
        for (int i = 0; i < POINTS; i++) {
            put(buffer.putDouble(lawOf[i]), inputs[i]);
        }
        Files.write(file, buffer.array());
    }

    private static void put(ByteBuffer buffer, SkimmerUnit unit) {
        Column column = unit.column();
        FoamTraits traits = unit.traits();
        buffer.putDouble(unit.columns())
                .putDouble(unit.weir().widthMm() / 1000)
                .putDouble(unit.weir().channelWidthMm() / 1000)
                .putDouble(column.openingMm() / 1000)
                .putDouble(column.funnelBaseMm() / 1000)
                .putDouble((column.funnelBaseMm() + column.funnelHeightMm()) / 1000)
                .putDouble(column.lipMm() / 1000)
                .putDouble(column.boreMm() / 2000)
                .putDouble(column.neckBoreMm() / 2000)
                .putDouble(traits.columnFeedShare())
                .putDouble(traits.holdupExponent())
                .putDouble(traits.drainageExponent())
                .putDouble(traits.meanFoamLiquidFraction());
    }

    private static void put(ByteBuffer buffer, SteadyInputs in) {
        buffer.putDouble(in.crestM())
                .putDouble(in.flowM3PerS())
                .putDouble(in.levelBeyondM())
                .putDouble(in.airM3PerS())
                .putDouble(in.terminalSpeedMPerS())
                .putDouble(in.meanLifeS())
                .putDouble(in.lifeShape())
                .putDouble(in.drainageSpeedMPerS())
                .putDouble(in.backPressureHeadM())
                .putDouble(in.weightOnWater());
    }

    /** How far answers from another language lie from ours at worst, relative to the number's size over all points. */
    double worstDifference(Path answers) throws IOException {
        ByteBuffer theirs = ByteBuffer.wrap(Files.readAllBytes(answers)).order(ByteOrder.nativeOrder());
        double[] size = new double[ANSWERS];
        double[] apart = new double[ANSWERS];
        for (int i = 0; i < POINTS; i++) {
            double[] ours = answers(law(i).at(inputs[i]));
            for (int k = 0; k < ANSWERS; k++) {
                size[k] = Math.max(size[k], Math.abs(ours[k]));
                apart[k] = Math.max(apart[k], Math.abs(ours[k] - theirs.getDouble()));
            }
        }
        double worst = 0;
        for (int k = 0; k < ANSWERS; k++) {
            worst = Math.max(worst, size[k] > 0 ? apart[k] / size[k] : apart[k]);
        }
        return worst;
    }

    private static double[] answers(SteadyPoint point) {
        return new double[] {
            point.headM(),
            point.clearLevelM(),
            point.holdup(),
            point.columnLevelM(),
            point.foamWeightHeadM(),
            point.foamGasM3(),
            point.shareAtLip(),
            point.lipGasFluxMPerS(),
            point.lipLiquidFraction(),
            point.lipLiquidFluxMPerS(),
            point.skimmateM3PerS(),
            point.columnFlooded() ? 1 : 0,
            point.lipFlooded() ? 1 : 0
        };
    }

    /** Shares of the points that flood or have no foam at the lip, in words. */
    String described() {
        int flooded = 0;
        int none = 0;
        for (int i = 0; i < POINTS; i++) {
            SteadyPoint point = law(i).at(inputs[i]);
            flooded += point.lipFlooded() || point.columnFlooded() ? 1 : 0;
            none += point.skimmateM3PerS() <= 0 ? 1 : 0;
        }
        return POINTS + " points on " + UNITS + " units, " + flooded + " of them flooded, " + none
                + " without foam at the lip";
    }
}
