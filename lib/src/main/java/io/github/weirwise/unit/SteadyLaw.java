package io.github.weirwise.unit;

import io.github.weirwise.internal.physics.bubbles.GasHoldup;
import io.github.weirwise.internal.physics.foam.RisingFoam;
import io.github.weirwise.internal.physics.hydraulics.CircularLip;
import io.github.weirwise.internal.physics.hydraulics.RectangularWeir;

/**
 * From settings to level, holdup, gas at the lip and skimmate at rest: the fast closed form, one unit.
 *
 * <p>In order: head over the weir (Kindsvater &amp; Carter 1957, drowned by Villemonte 1947), gas holdup (drift flux, Wallis
 * 1969), balance of pressure at the column's opening, share of the gas that gets to the lip (stated with the unit's traits,
 * {@link LipAnswer}, or by an assumed law of lives), drainage at the lip (Stevenson 2007), and water that reaches the lip runs over it
 * ({@link CircularLip}). The cup never gets more than the flow through the unit. Ranges are those of the formulas; {@link OperatingPoint} says when one is left. Immutable and
 * thread-safe. This one path serves {@link OperatingPoint}, the tank, the belief and the benchmarks.
 *
 * @since 0.1
 */
public final class SteadyLaw {
    private static final double MM = 1e-3;
    /** Far beyond any bubble's rise. */
    private static final double SWIFTEST_M_PER_S = 10;

    private final FoamSpace space;
    private final double columns;
    private final double weirWidthM;
    private final double channelWidthM;
    private final double openingM;
    private final double boreAreaM2;
    private final double neckAreaM2;
    private final CircularLip lip;
    private final GasAtLip gasAtLip;
    private final double feedShare;
    private final double holdupExponent;
    private final double drainageExponent;
    private final double foamLiquidFraction;
    private final double floodFraction;
    private final double floodGasPerDrainage;
    private final double floodDrainagePower;
    /** Immutable and whole whenever another thread sees it; which answer is kept does not matter. */
    private FreeHead newest;

    /** The law for the shape and the traits of a unit. */
    public SteadyLaw(SkimmerUnit unit) {
        space = new FoamSpace(unit.column());
        columns = unit.columns();
        weirWidthM = unit.weir().widthMm() * MM;
        channelWidthM = unit.weir().channelWidthMm() * MM;
        openingM = unit.column().openingMm() * MM;
        boreAreaM2 = space.boreAreaM2();
        neckAreaM2 = space.neckAreaM2();
        gasAtLip = GasAtLip.of(unit, space);
        lip = new CircularLip(unit.column().neckBoreMm() * MM);
        feedShare = unit.traits().columnFeedShare();
        holdupExponent = unit.traits().holdupExponent();
        drainageExponent = unit.traits().drainageExponent();
        foamLiquidFraction = unit.traits().meanFoamLiquidFraction();
        // The flux j eps/(1-eps) - K eps^n has a maximum up to j = n K eps^(n-1) (1-eps)^2 with eps = (n-1)/(n+1).
        double n = drainageExponent;
        floodFraction = (n - 1) / (n + 1);
        floodGasPerDrainage = n * Math.pow(floodFraction, n - 1) * (1 - floodFraction) * (1 - floodFraction);
        floodDrainagePower = Math.pow(floodFraction, n);
    }

    /**
     * The steady state for the given inputs. A flooded column or lip is an answer, not an error.
     *
     * @throws io.github.weirwise.report.OutOfRangeException for inputs put together by hand that a formula refuses: a crest outside
     *     0.001 to 100 m, more than 1000 m3/s over the weir, a rise speed outside 1e-6 to 10 m/s, a drainage speed outside
     *     1e-12 to 100 m/s; inputs of {@link SteadyInputs#of} never do
     */
    public SteadyPoint at(SteadyInputs in) {
        double airPerColumn = in.airM3PerS() / columns;
        double gasFlux = airPerColumn / boreAreaM2;
        double liquidFlux = -feedShare * in.flowM3PerS() / (columns * boreAreaM2);
        double holdup = holdup(gasFlux, liquidFlux, in.terminalSpeedMPerS());
        boolean columnFlooded = Double.isNaN(holdup);
        if (columnFlooded) {
            holdup = 1 / holdupExponent;
        }
        double clearM = in.crestM() + headM(in);
        double levelM = columnLevelM(clearM, holdup, in);
        double overflow = 0;
        if (levelM >= space.lipM()) {
            LipOverflow lip = new LipOverflow(this, in, holdup);
            clearM = lip.clearM(clearM);
            levelM = lip.levelM(clearM);
            overflow = lip.overflowM3PerS(clearM);
        }
        double foamGas = (1 - foamLiquidFraction) * space.volumeAboveM3(levelM);
        double share = gasAtLip.share(in, airPerColumn, Math.min(levelM, space.lipM()), foamGas);
        return atLip(in, clearM, holdup, columnFlooded, levelM, foamGas, share, overflow);
    }

    /** NaN for a flooded column, which any is whose gas or water is swifter than the formula reaches. */
    private double holdup(double gasFlux, double liquidFlux, double terminalSpeed) {
        if (gasFlux > SWIFTEST_M_PER_S || liquidFlux < -SWIFTEST_M_PER_S) {
            return gasFlux > 0 ? Double.NaN : 0;
        }
        return GasHoldup.richardsonZaki(gasFlux, liquidFlux, terminalSpeed, holdupExponent);
    }

    private double headM(SteadyInputs in) {
        if (in.flowM3PerS() <= 0) {
            return Math.max(0, in.levelBeyondM() - in.crestM());
        }
        RectangularWeir weir = new RectangularWeir(weirWidthM, channelWidthM, in.crestM());
        double beyond = in.levelBeyondM() - in.crestM();
        return beyond > 0 ? weir.drownedHead(in.flowM3PerS(), beyond) : freeHeadM(weir, in.flowM3PerS());
    }

    /** The same flow over the same crest is asked for many times in a row, so the newest answer is kept. */
    private double freeHeadM(RectangularWeir weir, double flowM3PerS) {
        FreeHead known = newest;
        if (known == null || known.flowM3PerS() != flowM3PerS || known.crestM() != weir.crestHeightM()) {
            known = new FreeHead(flowM3PerS, weir.crestHeightM(), weir.head(flowM3PerS));
            newest = known;
        }
        return known.headM();
    }

    private record FreeHead(double flowM3PerS, double crestM, double headM) {}

    /** Solves zs - zo = (1 - eps)(zc - zo) + phi eta (zl - zc) + pc/(rho g) for zc; linear because eta is a mean. */
    double columnLevelM(double clearM, double holdup, SteadyInputs in) {
        double push = clearM - openingM - in.backPressureHeadM();
        double perMetreOfFoam = in.weightOnWater() * foamLiquidFraction;
        double foamAtOpening = perMetreOfFoam * (space.lipM() - openingM);
        double levelM = openingM + (push - foamAtOpening) / (1 - holdup - perMetreOfFoam);
        // Over the lip there is no foam to weigh on the water.
        return levelM <= space.lipM() ? levelM : openingM + push / (1 - holdup);
    }

    double lipM() {
        return space.lipM();
    }

    /** The clear-water level at which the column's stands at the lip. */
    double clearAtLipM(double holdup, SteadyInputs in) {
        return openingM + in.backPressureHeadM() + (1 - holdup) * (space.lipM() - openingM);
    }

    /** Water over the weir at a clear-water level, m3/s; what would run back from beyond is not looked at. */
    double weirFlowM3PerS(double clearM, SteadyInputs in) {
        double head = clearM - in.crestM();
        double free = new RectangularWeir(weirWidthM, channelWidthM, in.crestM()).discharge(head);
        double beyond = in.levelBeyondM() - in.crestM();
        return beyond > 0 ? free * RectangularWeir.drownedFactor(head, beyond) : free;
    }

    /** Water over the lips of all columns with the column's level over them, m3/s; the bubbles in it take no water along. */
    double rimFlowM3PerS(double levelM, double holdup) {
        return columns * (1 - holdup) * lip.discharge(levelM - space.lipM());
    }

    private SteadyPoint atLip(
            SteadyInputs in,
            double clearM,
            double holdup,
            boolean columnFlooded,
            double levelM,
            double foamGas,
            double share,
            double overflow) {
        double drainage = in.drainageSpeedMPerS();
        double lipFlux = share * in.airM3PerS() / columns / neckAreaM2;
        double floodFlux = Math.min(SWIFTEST_M_PER_S, floodGasPerDrainage * drainage);
        boolean frothAtLip = lipFlux >= floodFlux;
        boolean waterAtLip = levelM >= space.lipM();
        double fraction = 0;
        double flux = 0;
        if (frothAtLip) {
            fraction = floodFraction;
            flux = floodedFlux(lipFlux, drainage);
        } else if (lipFlux > 0) {
            fraction = RisingFoam.liquidFraction(lipFlux, drainage, drainageExponent);
            flux = fluxAtMaximum(lipFlux, fraction);
        }
        double lipAreaM2 = columns * neckAreaM2;
        double skimmate = Math.min(in.flowM3PerS(), lipAreaM2 * flux + overflow);
        double foamWeight = in.weightOnWater() * foamLiquidFraction * Math.max(0, space.lipM() - levelM);
        return new SteadyPoint(
                Math.max(0, clearM - in.crestM()),
                clearM,
                holdup,
                levelM,
                foamWeight,
                foamGas,
                share,
                lipFlux,
                waterAtLip ? Math.max(fraction, 1 - holdup) : fraction,
                skimmate / lipAreaM2,
                skimmate,
                Math.min(overflow, skimmate),
                columnFlooded,
                waterAtLip || frothAtLip);
    }

    /** At the maximum K eps^n equals j eps / (n (1 - eps)^2), which spares a power. */
    private double fluxAtMaximum(double gasFlux, double fraction) {
        double dry = 1 - fraction;
        return gasFlux * fraction / dry * (1 - 1 / (drainageExponent * dry));
    }

    /** Past the limit the froth keeps the limit's liquid fraction, so the flux joins the unflooded branch without a step. */
    private double floodedFlux(double gasFlux, double drainage) {
        return Math.max(0, gasFlux * floodFraction / (1 - floodFraction) - drainage * floodDrainagePower);
    }
}
