package io.github.weirwise.trial;

import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.report.Range;
import java.time.Instant;

/** What a policy says with its step: the likeliest cause, the chance to be in band, the 80 % range of the amount. */
record Stated(Cause topCause, double topChance, double bandChance, Range mlPerDay, Instant judgeAt) {}
