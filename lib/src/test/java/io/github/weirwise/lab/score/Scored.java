package io.github.weirwise.lab.score;

import java.time.Instant;

/**
 * One forecast and what came.
 *
 * @param at when it was read
 * @param forecast the library's, made from the journal before the reading
 * @param asLastTime the forecast "as last time"
 * @param average the forecast "mean of the last five"
 * @param came what was read
 */
record Scored(Instant at, Bell forecast, Bell asLastTime, Bell average, double came) {}
