package io.github.weirwise.unit;

/**
 * What the steady law answers, in SI units, for all columns together where it is a flow; sources stand with {@link SteadyLaw}.
 *
 * @param headM head over the crest
 * @param clearLevelM level in the chamber outside the columns
 * @param holdup share of gas in the bubbly column; at its flooding value when flooded
 * @param columnLevelM level inside the bubbly column
 * @param foamWeightHeadM part of the foam's weight on the water, as metres of water
 * @param foamGasM3 gas held in the foam of one column
 * @param shareAtLip share of the gas that reaches the lip as foam
 * @param lipGasFluxMPerS gas through the lip per area
 * @param lipLiquidFraction liquid fraction of the foam at the lip
 * @param lipLiquidFluxMPerS liquid through the lip per area
 * @param skimmateM3PerS liquid into the cup, the water over the lip included; never more than the flow through the unit
 * @param overflowM3PerS water over the lip alone, which carries no foam
 * @param columnFlooded more gas than the column can pass
 * @param lipFlooded more gas through the lip than drainage can follow, or water at the lip
 * @since 0.1
 */
public record SteadyPoint(
        double headM,
        double clearLevelM,
        double holdup,
        double columnLevelM,
        double foamWeightHeadM,
        double foamGasM3,
        double shareAtLip,
        double lipGasFluxMPerS,
        double lipLiquidFraction,
        double lipLiquidFluxMPerS,
        double skimmateM3PerS,
        double overflowM3PerS,
        boolean columnFlooded,
        boolean lipFlooded) {
    /** Volume of gas that leaves over the lip per volume of liquid; by the lip's foam, so it holds for any number of columns. */
    public double gasPerSkimmate() {
        return lipGasFluxMPerS / lipLiquidFluxMPerS;
    }
}
