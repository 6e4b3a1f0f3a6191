package io.github.weirwise.unit;

import io.github.weirwise.internal.physics.foam.BubbleGrowth;
import io.github.weirwise.internal.physics.foam.FoamColumn;
import io.github.weirwise.internal.physics.foam.FoamLife;
import io.github.weirwise.internal.physics.foam.FoamLiquid;
import io.github.weirwise.internal.physics.foam.FoamPermeability;
import io.github.weirwise.internal.physics.foam.FoamSketch;
import io.github.weirwise.internal.physics.foam.SettledColumn;
import io.github.weirwise.internal.physics.seawater.MoreSeawater;
import io.github.weirwise.internal.physics.seawater.Seawater;
import java.util.List;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Puts a unit's settings into a foam column, and the foam's weight back into the balance of pressure that sets its level. */
final class ColumnSolution {
    private static final double LEVEL_TOLERANCE_M = 1e-8;
    private static final double THINNEST_FOAM_M = 2e-4;

    private final SkimmerUnit unit;
    private final SteadyInputs inputs;
    private final SteadyPoint fast;
    private final ColumnAssumptions assumptions;
    private final FoamLiquid liquid;
    private final BubbleGrowth growth;
    private final double airPerColumn;
    private final double openingM;
    private final double lipM;

    ColumnSolution(SkimmerUnit unit, Settings settings, ColumnAssumptions assumptions) {
        this.unit = unit;
        this.inputs = SteadyInputs.of(unit, settings);
        this.fast = new SteadyLaw(unit).at(inputs);
        this.assumptions = assumptions;
        double salinity = settings.practicalSalinity();
        double celsius = settings.waterCelsius();
        this.liquid = new FoamLiquid(
                Seawater.density(salinity, celsius),
                Seawater.viscosity(salinity, celsius),
                MoreSeawater.surfaceTension(salinity, celsius) - assumptions.surfacePressureMnPerM() / 1000);
        FoamTraits traits = unit.traits();
        double fresh = FreshBubble.diameterM(traits, settings) / 2;
        this.growth =
                new BubbleGrowth(fresh, Math.max(fresh, traits.lipBubbleMm() / 2000), assumptions.grownAgeSeconds());
        this.airPerColumn = inputs.airM3PerS() / unit.columns();
        this.openingM = unit.column().openingMm() / 1000;
        this.lipM = unit.column().lipMm() / 1000;
    }

    ReferenceColumn solve() {
        double level = levelM(0);
        if (airPerColumn <= 0 || level > lipM - THINNEST_FOAM_M) {
            return withoutFoam(level);
        }
        if (inputs.weightOnWater() > 0) {
            double borne = borneM(level);
            level = new BracketingNthOrderBrentSolver(LEVEL_TOLERANCE_M, 5)
                    .solve(60, at -> at - levelM(borneM(at)), levelM(borne) - 0.2 * borne - 1e-4, level);
        }
        ReferenceColumn column = assumptions.detail() == ColumnDetail.FULL ? full(level) : sketch(level);
        return fast.columnFlooded() ? flooded(column) : column;
    }

    private ReferenceColumn full(double levelM) {
        SettledColumn foam = column(levelM).settled();
        double borne = inputs.weightOnWater() * foam.heldLiquidHeadM();
        return ReferenceColumn.of(unit, levelM, borne, airPerColumn, foam);
    }

    private ReferenceColumn sketch(double levelM) {
        FoamSketch foam = column(levelM).sketched();
        double borne = inputs.weightOnWater() * foam.heldLiquidHeadM();
        return ReferenceColumn.of(unit, levelM, borne, foam);
    }

    /** zs - zo = (1 - e)(zc - zo) + borne + pc/(rho g), solved for zc. */
    private double levelM(double borneM) {
        double push = fast.clearLevelM() - openingM - inputs.backPressureHeadM() - borneM;
        return openingM + push / (1 - fast.holdup());
    }

    private double borneM(double levelM) {
        FoamColumn foam = column(levelM);
        double head = assumptions.detail() == ColumnDetail.FULL
                ? foam.settled().heldLiquidHeadM()
                : foam.sketched().heldLiquidHeadM();
        return inputs.weightOnWater() * head;
    }

    FoamColumn column(double levelM) {
        FoamTraits traits = unit.traits();
        return new FoamColumn(
                heightM -> area(unit.column().boreAtMm(1000 * heightM) / 1000),
                levelM,
                lipM,
                airPerColumn,
                liquid,
                FoamPermeability.toPacking(traits.filmMobility(), traits.drainageExponent()),
                assumptions.capillarity(),
                growth,
                new FoamLife(inputs.meanLifeS(), inputs.lifeShape()),
                assumptions.venting());
    }

    private static double area(double bore) {
        return Math.PI / 4 * bore * bore;
    }

    /** No air, or water at the lip: what the fast form says. */
    private ReferenceColumn withoutFoam(double levelM) {
        return new ReferenceColumn(
                levelM * 1000,
                levelM * 1000 - unit.column().funnelBaseMm(),
                0,
                0,
                fast.skimmateM3PerS() * 1e6 * 86400,
                fast.lipLiquidFraction(),
                0,
                growth.freshRadiusM() * 2000,
                Double.POSITIVE_INFINITY,
                levelM * 1000,
                fast.lipFlooded() || fast.columnFlooded(),
                List.of());
    }

    private static ReferenceColumn flooded(ReferenceColumn column) {
        return new ReferenceColumn(
                column.columnLevelMm(),
                column.submergenceMm(),
                column.foamWeightMm(),
                column.gasShareAtLip(),
                column.skimmateMlPerDay(),
                column.liquidFractionAtLip(),
                column.meanFoamLiquidFraction(),
                column.lipBubbleMm(),
                column.lipAgeSeconds(),
                column.foamTopMm(),
                true,
                column.layers());
    }

    /** The mean life at which the column gives the target's amount; the amount rises with it, so halving finds it. */
    static SkimmerUnit fitted(SkimmerUnit unit, Settings settings, ColumnAssumptions assumptions) {
        double own = unit.traits().meanLifeSeconds();
        double low = 0.5 * own;
        double high = 2 * own;
        double wanted = unit.target().skimmateMlPerDay();
        if (amount(unit, low, settings, assumptions) > wanted || amount(unit, high, settings, assumptions) < wanted) {
            throw new IllegalArgumentException("no mean life from " + low + " to " + high + " s gives " + wanted
                    + " mL/day under these assumptions; take another setting, target or way of venting");
        }
        while (high - low > 1e-6 * high) {
            double middle = 0.5 * (low + high);
            if (amount(unit, middle, settings, assumptions) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return unit.withTraits(unit.traits().withMeanLifeSeconds(0.5 * (low + high)));
    }

    private static double amount(SkimmerUnit unit, double life, Settings settings, ColumnAssumptions assumptions) {
        SkimmerUnit other = unit.withTraits(unit.traits().withMeanLifeSeconds(life));
        return new ColumnSolution(other, settings, assumptions).solve().skimmateMlPerDay();
    }
}
