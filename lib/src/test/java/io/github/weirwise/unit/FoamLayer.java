package io.github.weirwise.unit;

/**
 * The foam at one height in the reference column; an answer of {@link ReferenceColumn}, whose sources stand there.
 *
 * @param heightMm height over the chamber floor
 * @param liquidFraction share of liquid, 0 to 1
 * @param gasShare share of the air that still is foam here, 0 to 1
 * @param riseMmPerMin speed of the bubbles
 * @param ageSeconds age of the bubbles
 * @param bubbleMm their diameter
 * @since 0.1
 */
public record FoamLayer(
        double heightMm,
        double liquidFraction,
        double gasShare,
        double riseMmPerMin,
        double ageSeconds,
        double bubbleMm) {}
