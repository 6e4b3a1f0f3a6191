package io.github.weirwise.score;

import java.time.Instant;

/**
 * One forecast and what came.
 *
 * @param at when it was read
 * @param forecast the library's, made from the journal before the reading
 * @param asLastTime the forecast "as last time"
 * @param average the forecast "mean of the last five"
 * @param came what was read
 * @since 0.2
 */
public record Scored(Instant at, Bell forecast, Bell asLastTime, Bell average, double came) {}
