package io.github.weirwise.internal.physics.foam;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.hipparchus.ode.sampling.ODEStepHandler;

/**
 * Steady column by marching upward from the water. The state at a height is the gas held below, from which age and gas flow
 * follow in closed form; (packing - eps)^2, whose slope stays finite where the foam meets water; and the liquid held
 * below. Upward is the stable way: where drainage is faster than carriage, the liquid fraction forgets its start. The
 * liquid flow is the same at all heights in a steady column, and must be what the lip passes: a few passes settle it.
 */
final class ColumnMarch implements OrdinaryDifferentialEquation, ODEStepHandler {
    private static final int GAS = 0;
    private static final int REST = 1;
    private static final int LIQUID = 2;
    private static final int HEAD = 3;
    private static final int STATES = 4;
    private static final int MOST_PASSES = 12;
    private static final double DRIEST = 1e-7;
    /** Below this share of Q Sigma left to live through, no gas is left. */
    private static final double NOTHING_LEFT = 1e-6;

    private final FoamColumn column;
    private final ColumnLaws laws;
    private final double gas;
    private final double lifeVolume;
    private final double tolerance;
    private final List<FoamSlice> slices = new ArrayList<>();
    private double liquidFlow;

    ColumnMarch(FoamColumn column, double tolerance) {
        this.column = column;
        this.laws = new ColumnLaws(column);
        this.gas = column.gasFlowM3PerS();
        this.lifeVolume = gas * column.life().meanLifeS();
        this.tolerance = tolerance;
    }

    SettledColumn settle() {
        double[] end = pass();
        double known = 0;
        double wanted = atLip(end).liquidFlow();
        for (int i = 0; i < MOST_PASSES && Math.abs(wanted - liquidFlow) > 0.1 * tolerance * wanted; i++) {
            double slope = liquidFlow == known ? 0 : (wanted - knownWanted) / (liquidFlow - known);
            known = liquidFlow;
            knownWanted = wanted;
            double next = slope < 0.9 ? liquidFlow + (wanted - liquidFlow) / (1 - slope) : wanted;
            liquidFlow = Math.max(0, next);
            end = pass();
            wanted = atLip(end).liquidFlow();
        }
        return result(end);
    }

    private double knownWanted;

    private double[] pass() {
        slices.clear();
        double[] start = new double[STATES];
        double span = column.lipM() - column.waterM();
        double[] absolute = {
            1e-3 * tolerance * lifeVolume, 0.1 * tolerance, 1e-3 * tolerance * lifeVolume, tolerance * span
        };
        double[] relative = {tolerance, tolerance, tolerance, tolerance};
        DormandPrince54Integrator integrator =
                new DormandPrince54Integrator(1e-12 * span, 0.1 * span, absolute, relative);
        integrator.addStepHandler(this);
        slices.add(slice(column.waterM(), start));
        ODEStateAndDerivative end = integrator.integrate(this, new ODEState(column.waterM(), start), column.lipM());
        return end.getPrimaryState();
    }

    @Override
    public void handleStep(ODEStateInterpolator step) {
        ODEStateAndDerivative state = step.getCurrentState();
        slices.add(slice(state.getTime(), state.getPrimaryState()));
    }

    @Override
    public int getDimension() {
        return STATES;
    }

    @Override
    public double[] computeDerivatives(double heightM, double[] state) {
        double[] slope = new double[STATES];
        if (left(state) <= NOTHING_LEFT) {
            return slope;
        }
        double area = column.bore().areaM2(heightM);
        FoamSlice here = slice(heightM, state);
        double fraction = here.liquidFraction();
        slope[GAS] = area * (1 - fraction);
        slope[LIQUID] = area * fraction;
        slope[HEAD] = fraction;
        if (laws.sucks()) {
            slope[REST] = restSlope(here, area, state[REST]);
        }
        return slope;
    }

    /** Slope of (packing - eps)^2 by height: suction bears what carriage, drainage and the liquid flow leave unbalanced. */
    private double restSlope(FoamSlice here, double area, double rest) {
        double fraction = here.liquidFraction();
        double radius = here.bubbleRadiusM();
        double speed = laws.drainageSpeed(radius * radius);
        double drainage = speed * laws.permeabilityFlux(fraction);
        double growing = laws.suctionHead(fraction, radius) * laws.growthRate(here.ageS()) / here.bubbleSpeedMPerS();
        double pull = 1 + growing / (1 - fraction);
        double unbalanced = here.bubbleSpeedMPerS() * fraction - drainage * pull - liquidFlow / area;
        double slope = -2 * (1 - fraction) * unbalanced / (drainage * laws.suctionSlopePerRest(fraction, radius));
        return rest <= 0 ? Math.max(0, slope) : slope;
    }

    /** What the state says about the foam at a height. */
    private FoamSlice slice(double heightM, double[] state) {
        double area = column.bore().areaM2(heightM);
        double age = age(state);
        double survival = laws.survival(age);
        double here = column.venting() == Venting.THROUGH_FOAM ? gas * survival : gas;
        double square = laws.squareRadius(age, survival);
        double fraction = fraction(here / area, square, state[REST], area);
        return new FoamSlice(heightM, fraction, here, here / (area * (1 - fraction)), age, Math.sqrt(square));
    }

    private double fraction(double gasFlux, double squareRadius, double rest, double area) {
        if (laws.sucks() && rest > 0) {
            return Math.max(DRIEST, laws.packingFraction() - Math.sqrt(rest));
        }
        double drained = laws.drainedFraction(gasFlux, laws.drainageSpeed(squareRadius), liquidFlow / area);
        return laws.sucks() ? Math.max(laws.packingFraction(), drained) : drained;
    }

    /** 1 - V/(Q Sigma): what of the mean life's gas the foam below does not yet hold. */
    private double left(double[] state) {
        return column.venting() == Venting.THROUGH_FOAM ? 1 - state[GAS] / lifeVolume : 1;
    }

    private double age(double[] state) {
        if (column.venting() != Venting.THROUGH_FOAM) {
            return state[GAS] / gas;
        }
        double alpha = column.life().alpha();
        double left = Math.max(NOTHING_LEFT, left(state));
        return column.life().thetaS() * (Math.pow(left, -1 / (alpha - 1)) - 1);
    }

    private record Lip(FoamSlice slice, double gasFlow, double liquidFlow, boolean flooded) {}

    private Lip atLip(double[] state) {
        double area = column.bore().areaM2(column.lipM());
        FoamSlice slice = slice(column.lipM(), state);
        if (left(state) <= NOTHING_LEFT) {
            return new Lip(slice, 0, 0, false);
        }
        double speed = laws.drainageSpeed(slice.bubbleRadiusM() * slice.bubbleRadiusM());
        double flux = slice.gasFlowM3PerS() / area;
        double fullest = laws.fullestFraction(flux, speed);
        boolean flooded = fullest >= laws.packingFraction();
        double most = area * Math.max(0, laws.liquidFlux(flux, speed, fullest));
        if (column.venting() == Venting.AT_TOP) {
            double age = laws.ageAtTop(slice.ageS(), slice.liquidFraction(), slice.bubbleRadiusM());
            double over = slice.gasFlowM3PerS() * laws.survival(age);
            double wet = slice.liquidFraction() / (1 - slice.liquidFraction());
            return new Lip(slice, over, Math.min(most, over * wet), flooded);
        }
        return new Lip(slice, slice.gasFlowM3PerS(), Math.min(most, narrowestFlow()), flooded);
    }

    /** With gas conserved the foam may pass least liquid further down, where it is wide and its bubbles small. */
    private double narrowestFlow() {
        double least = Double.POSITIVE_INFINITY;
        if (column.venting() == Venting.BY_MERGING) {
            for (FoamSlice slice : slices) {
                double area = column.bore().areaM2(slice.heightM());
                double speed = laws.drainageSpeed(slice.bubbleRadiusM() * slice.bubbleRadiusM());
                double flux = slice.gasFlowM3PerS() / area;
                least = Math.min(least, area * laws.liquidFlux(flux, speed, laws.fullestFraction(flux, speed)));
            }
        }
        return least;
    }

    private SettledColumn result(double[] end) {
        Lip lip = atLip(end);
        boolean reaches = left(end) > NOTHING_LEFT;
        return new SettledColumn(
                reaches,
                reaches ? column.lipM() : topM(),
                lip.gasFlow(),
                lip.liquidFlow(),
                lip.slice().liquidFraction(),
                reaches ? lip.slice().ageS() : Double.POSITIVE_INFINITY,
                lip.slice().bubbleRadiusM(),
                end[GAS],
                end[LIQUID],
                end[HEAD],
                lip.flooded(),
                slices);
    }

    /** Where the last gas is gone. */
    private double topM() {
        for (FoamSlice slice : slices) {
            if (slice.gasFlowM3PerS() <= gas * laws.survival(age(new double[] {lifeVolume, 0, 0, 0}))) {
                return slice.heightM();
            }
        }
        return column.lipM();
    }
}
