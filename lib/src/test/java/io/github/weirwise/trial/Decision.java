package io.github.weirwise.trial;

import io.github.weirwise.advice.HoldReason;
import io.github.weirwise.advice.Step;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** A step and, from a policy that states any, its chances. */
record Decision(Step step, Optional<Stated> stated) {
    static Decision of(Step step) {
        return new Decision(step, Optional.empty());
    }

    static Decision hold(Instant now, HoldReason reason) {
        return of(new Step.Hold(now.plus(Duration.ofHours(24)), reason));
    }

    static Decision move(double fromMm, double toMm) {
        return fromMm == toMm
                ? throwNoMove()
                : of(new Step.MoveWeir(Math.max(-50, Math.min(50, toMm - fromMm)), toMm, false));
    }

    private static Decision throwNoMove() {
        throw new IllegalArgumentException("a move has a size");
    }
}
