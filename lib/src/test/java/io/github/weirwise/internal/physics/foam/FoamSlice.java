package io.github.weirwise.internal.physics.foam;

/**
 * The foam at one height of a column, SI units; an answer of {@link FoamColumn}, whose sources stand there.
 *
 * @param heightM height over the column's floor
 * @param liquidFraction eps, share of liquid, 0 to 1
 * @param gasFlowM3PerS gas that still is foam
 * @param bubbleSpeedMPerS rise of the bubbles
 * @param ageS age of the bubbles
 * @param bubbleRadiusM their radius
 * @since 0.1
 */
public record FoamSlice(
        double heightM,
        double liquidFraction,
        double gasFlowM3PerS,
        double bubbleSpeedMPerS,
        double ageS,
        double bubbleRadiusM) {}
