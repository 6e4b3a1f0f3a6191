package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;
import java.util.Objects;

/**
 * A foam column between the water in which its bubbles are made and a lip, along one upright axis: what goes in. {@link
 * #settled} solves the steady column directly; {@link FoamColumnRun} follows the same equations in time.
 *
 * <p>Gas and liquid are conserved: bubbles rise with speed v, liquid is carried up with them, runs down relative to them by
 * {@link FoamPermeability} and is sucked towards drier foam by {@link Capillarity}; bubbles age, grow ({@link BubbleGrowth})
 * and burst ({@link FoamLife}), and their gas goes where {@link Venting} says. Liquid of burst bubbles stays in the foam. All
 * bubbles at one height have one age. At the lip the foam leaves sideways, so drainage no longer holds liquid back: the
 * liquid flux there is the greatest that the foam can pass (Stevenson 2007), as water goes critical over a weir.
 *
 * @param bore cross-section by height, over the same floor as the two heights
 * @param waterM height of the water's surface, where the foam begins, -100 to 100 m
 * @param lipM height of the lip, above the water by 1e-4 to 100 m
 * @param gasFlowM3PerS gas into the foam from below, 0 to 10 m3/s
 * @param liquid what is between the bubbles
 * @param permeability how it runs down
 * @param capillarity how it is sucked up
 * @param growth size of the bubbles by age
 * @param life law of lives of the bubbles
 * @param venting where the gas of burst bubbles goes
 * @since 0.1
 */
public record FoamColumn(
        BoreShape bore,
        double waterM,
        double lipM,
        double gasFlowM3PerS,
        FoamLiquid liquid,
        FoamPermeability permeability,
        Capillarity capillarity,
        BubbleGrowth growth,
        FoamLife life,
        Venting venting) {
    /**
     * @throws io.github.weirwise.report.OutOfRangeException outside the limits
     */
    public FoamColumn {
        Objects.requireNonNull(bore, "bore");
        Require.inRange("waterM", waterM, -100, 100, "m", "give heights in metres over one floor");
        Require.inRange("lipM", lipM, waterM + 1e-4, waterM + 100, "m", "there is no foam with water at the lip");
        Require.inRange("gasFlowM3PerS", gasFlowM3PerS, 0, 10, "m3/s", "100 L/h is 2.8e-5 m3/s");
        Objects.requireNonNull(liquid, "liquid");
        Objects.requireNonNull(permeability, "permeability");
        Objects.requireNonNull(capillarity, "capillarity");
        Objects.requireNonNull(growth, "growth");
        Objects.requireNonNull(life, "life");
        Objects.requireNonNull(venting, "venting");
    }

    /**
     * The steady column, solved from the water upward to a relative error of 1e-7.
     *
     * @throws io.github.weirwise.report.OutOfRangeException for a gas flow of 0: follow such foam with {@link FoamColumnRun}
     */
    public SettledColumn settled() {
        return settled(1e-7);
    }

    /**
     * The steady column with a chosen error.
     *
     * @param tolerance relative error of each step, 1e-11 to 1e-2
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits or for a gas flow of 0
     */
    public SettledColumn settled(double tolerance) {
        Require.inRange("tolerance", tolerance, 1e-11, 1e-2, "", "1e-7 is plenty");
        Require.inRange(
                "gasFlowM3PerS", gasFlowM3PerS, 1e-12, 10, "m3/s", "without gas no foam settles between water and lip");
        return new ColumnMarch(this, tolerance).settle();
    }

    /**
     * The steady column drawn in few strokes: gas and liquid counted age by age, suction left out, tens of times quicker than
     * {@link #settled}. For tank foam in the working box the liquid over the lip follows {@link #settled} within some per
     * cent when both are fitted at one point (command {@code column}).
     *
     * @throws IllegalArgumentException if the gas of burst bubbles does not vent through the foam
     * @throws io.github.weirwise.report.OutOfRangeException for a gas flow of 0
     */
    public FoamSketch sketched() {
        if (venting != Venting.THROUGH_FOAM) {
            throw new IllegalArgumentException(
                    "a sketch knows only foam whose burst gas vents through it, not " + venting + "; use settled()");
        }
        Require.inRange(
                "gasFlowM3PerS", gasFlowM3PerS, 1e-12, 10, "m3/s", "without gas no foam settles between water and lip");
        return new ColumnSketch(this).draw();
    }

    /** The same column with another law of lives. */
    public FoamColumn withLife(FoamLife other) {
        return new FoamColumn(
                bore, waterM, lipM, gasFlowM3PerS, liquid, permeability, capillarity, growth, other, venting);
    }

    /**
     * The same column over another water level.
     *
     * @param heightM of the water's surface, -100 m to 1e-4 m below the lip
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public FoamColumn withWaterM(double heightM) {
        return new FoamColumn(
                bore, heightM, lipM, gasFlowM3PerS, liquid, permeability, capillarity, growth, life, venting);
    }
}
