package io.github.weirwise.advice;

import java.time.Duration;

/**
 * How long to wait. All are starting values from common practice (from memory) and meant to be edited.
 *
 * @param floodLook after any move, service or restart, until the look for a flood; above zero
 * @param judge after a move, until its result can be judged; above zero
 * @param afterWashing foam is away after washing neck and cup
 * @param afterFeeding foam is low after feeding or hands in the tank
 * @param afterAdditive foam is wild after a conditioner, medicine or fresh sealant
 * @param breakIn a new unit is not fine-tuned before this
 * @since 0.1
 */
public record Clocks(
        Duration floodLook,
        Duration judge,
        Duration afterWashing,
        Duration afterFeeding,
        Duration afterAdditive,
        Duration breakIn) {
    /** 20 min, 24 h, 18 h, 18 h, 4 days, 3 days. */
    public static final Clocks COMMON_PRACTICE = new Clocks(
            Duration.ofMinutes(20),
            Duration.ofHours(24),
            Duration.ofHours(18),
            Duration.ofHours(18),
            Duration.ofDays(4),
            Duration.ofDays(3));

    /**
     * @throws IllegalArgumentException if a duration is negative, or the first two are zero
     */
    public Clocks {
        for (Duration each : new Duration[] {floodLook, judge, afterWashing, afterFeeding, afterAdditive, breakIn}) {
            if (each.isNegative()) {
                throw new IllegalArgumentException("a waiting time is " + each + ", must not be negative");
            }
        }
        if (floodLook.isZero() || judge.isZero()) {
            throw new IllegalArgumentException("floodLook and judge must be longer than zero");
        }
    }
}
