package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;

/**
 * A {@link FoamColumn} (its sources stand there) followed in time, cut into equal cells (method of lines; Dormand-Prince 5(4) with its step kept by the
 * error). The foam fills the room between water and lip all the time. Immutable: each step gives a new run. The cost goes
 * with the third power of the number of cells; for the steady column alone {@link FoamColumn#settled} is far
 * quicker.
 *
 * @since 0.1
 */
public final class FoamColumnRun {
    private static final int MOST_CELLS = 2000;

    private final FoamColumn column;
    private final FoamCells cells;
    private final double timeS;
    private final double[] state;
    private final double tolerance;

    private FoamColumnRun(FoamColumn column, FoamCells cells, double timeS, double[] state, double tolerance) {
        this.column = column;
        this.cells = cells;
        this.timeS = timeS;
        this.state = state;
        this.tolerance = tolerance;
    }

    /**
     * The start: a liquid fraction by height, and bubbles as old as they are in a steady foam of that wetness.
     *
     * @param column what goes in
     * @param cells number of cells, 4 to 2000; 100 give about 1 % in the liquid over the lip
     * @param fractionAtM liquid fraction, 1e-9 to 0.95, by height in m over the column's floor
     * @throws io.github.weirwise.report.OutOfRangeException outside the limits
     * @throws IllegalArgumentException if such a foam would all burst below the lip
     */
    public static FoamColumnRun from(FoamColumn column, int cells, DoubleUnaryOperator fractionAtM) {
        Require.inRange("cells", cells, 4, MOST_CELLS, "", "100 cells give about 1 %");
        FoamCells cut = new FoamCells(column, cells);
        double[] state = new double[2 * cells];
        double gasBelow = 0;
        for (int i = 0; i < cells; i++) {
            double fraction = fractionAtM.applyAsDouble(cut.heightM(i));
            Require.inRange("fractionAtM", fraction, 1e-9, ColumnLaws.WETTEST, "", "give the share of liquid");
            state[i] = fraction;
            double here = cut.cellVolumeM3(i) * (1 - fraction);
            state[cells + i] = age(column, gasBelow + 0.5 * here);
            gasBelow += here;
        }
        return new FoamColumnRun(column, cut, 0, state, 1e-6);
    }

    private static double age(FoamColumn column, double gasBelowM3) {
        if (column.gasFlowM3PerS() == 0) {
            return 0;
        }
        double age = column.venting() == Venting.THROUGH_FOAM
                ? column.life().ageAtTopS(column.gasFlowM3PerS(), gasBelowM3)
                : gasBelowM3 / column.gasFlowM3PerS();
        if (Double.isInfinite(age)) {
            throw new IllegalArgumentException(
                    "a foam with a mean life of " + column.life().meanLifeS()
                            + " s all bursts below the lip; give more gas, a longer life or a higher water level");
        }
        return age;
    }

    /**
     * The same run some time later.
     *
     * @param seconds 1e-9 to 1e7 s
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public FoamColumnRun after(double seconds) {
        Require.inRange("seconds", seconds, 1e-9, 1e7, "s", "give the time to go on");
        int n = cells.cells();
        double[] absolute = new double[2 * n];
        double[] relative = new double[2 * n];
        for (int i = 0; i < 2 * n; i++) {
            absolute[i] = i < n ? 1e-3 * tolerance : tolerance;
            relative[i] = tolerance;
        }
        DormandPrince54Integrator integrator =
                new DormandPrince54Integrator(1e-9 * seconds, seconds, absolute, relative);
        double[] end = integrator
                .integrate(cells, new ODEState(timeS, state), timeS + seconds)
                .getPrimaryState();
        return new FoamColumnRun(column, cells, timeS + seconds, end, tolerance);
    }

    /**
     * The run when the liquid over the lip no longer changes by more than a share in the given time.
     *
     * @param seconds time between looks, 1e-3 to 1e6 s
     * @param change relative change that counts as none, 1e-12 to 1
     * @throws IllegalStateException if it still changes after 1000 looks
     */
    public FoamColumnRun untilSteady(double seconds, double change) {
        Require.inRange("seconds", seconds, 1e-3, 1e6, "s", "30 s suit tank foam");
        Require.inRange("change", change, 1e-12, 1, "", "1e-6 is plenty");
        FoamColumnRun run = this;
        for (int look = 0; look < 1000; look++) {
            FoamColumnRun next = run.after(seconds);
            double before = run.liquidOverLipM3PerS();
            if (Math.abs(next.liquidOverLipM3PerS() - before) <= change * before) {
                return next;
            }
            run = next;
        }
        throw new IllegalStateException("the foam column still changes after " + 1000 * seconds
                + " s; look at slices() to see where, or allow a greater change");
    }

    /** Time since the start, s. */
    public double timeS() {
        return timeS;
    }

    /** Liquid over the lip, m3/s. */
    public double liquidOverLipM3PerS() {
        return cells.flows(state).liquidOverLipM3PerS();
    }

    /** Gas that arrives at the lip as foam, m3/s. */
    public double gasAtLipM3PerS() {
        return cells.flows(state).gasAtLipM3PerS();
    }

    /** Gas in the foam, m3. */
    public double heldGasM3() {
        double held = 0;
        for (int i = 0; i < cells.cells(); i++) {
            held += cells.cellVolumeM3(i) * (1 - state[i]);
        }
        return held;
    }

    /** Liquid in the foam, m3. */
    public double heldLiquidM3() {
        double held = 0;
        for (int i = 0; i < cells.cells(); i++) {
            held += cells.cellVolumeM3(i) * state[i];
        }
        return held;
    }

    /** Integral of the liquid fraction over the height: the foam's weight per area as metres of water. */
    public double heldLiquidHeadM() {
        double held = 0;
        for (int i = 0; i < cells.cells(); i++) {
            held += cells.widthM() * state[i];
        }
        return held;
    }

    /** The foam in the middle of each cell, from the water upward. */
    public List<FoamSlice> slices() {
        FoamCells.Flows flows = cells.flows(state);
        List<FoamSlice> slices = new ArrayList<>();
        for (int i = 0; i < cells.cells(); i++) {
            slices.add(flows.slice(i));
        }
        return slices;
    }
}
