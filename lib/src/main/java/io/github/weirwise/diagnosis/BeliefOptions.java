package io.github.weirwise.diagnosis;

import io.github.weirwise.report.Require;

/**
 * How a belief is computed.
 *
 * @param possibilities how many are drawn, 100 to 1000000
 * @param seed same seed, same belief
 * @since 0.1
 */
public record BeliefOptions(int possibilities, long seed) {
    /** 600 possibilities, seed 1. */
    public static final BeliefOptions DEFAULT = new BeliefOptions(600, 1);

    /** The same with other draws; {@code times} counts from 1. */
    public BeliefOptions again(int times) {
        return new BeliefOptions(possibilities, seed + 0x9E3779B97F4A7C15L * times);
    }

    /** Checks the range. */
    public BeliefOptions {
        Require.inRange("possibilities", possibilities, 100, 1_000_000, "", "600 is enough for advice");
    }
}
