package io.github.weirwise.score;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * A forecast of one number: a normal in millimetres or in the logarithm of an amount.
 *
 * @param mean its middle
 * @param deviation its standard deviation
 * @since 0.2
 */
public record Bell(double mean, double deviation) {
    private static final double TENTH = 1.2815515655446004;
    /** A share of every forecast is spread evenly over this many units, so that no single miss outweighs a journal. */
    private static final double ANYTHING = 0.02;

    /** The normal whose middle 80 % is a stated range, widened by the scatter of the reading itself. */
    public static Bell of(double low, double high, double scatter) {
        double own = (high - low) / (2 * TENTH);
        return new Bell((low + high) / 2, Math.hypot(own, scatter));
    }

    /** Lower end of its middle 80 %. */
    public double low() {
        return mean - TENTH * deviation;
    }

    /** Upper end of its middle 80 %. */
    public double high() {
        return mean + TENTH * deviation;
    }

    /** Whether a value lies in the middle 80 %. */
    public boolean holds(double value) {
        return value >= low() && value <= high();
    }

    /** Chance to lie between two limits. */
    public double between(double from, double to) {
        NormalDistribution normal = new NormalDistribution(mean, deviation);
        return normal.cumulativeProbability(to) - normal.cumulativeProbability(from);
    }

    /** Logarithm of the density given to what came; more is better. */
    public double logScore(double came, double anythingWidth) {
        double z = (came - mean) / deviation;
        double density = Math.exp(-z * z / 2) / (deviation * Math.sqrt(2 * Math.PI));
        return Math.log((1 - ANYTHING) * density + ANYTHING / anythingWidth);
    }
}
