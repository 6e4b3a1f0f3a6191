package io.github.weirwise.advice;

import io.github.weirwise.report.Times;
import io.github.weirwise.unit.Part;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** When to look after a step: for a flood soon, and at the result when it can be judged. */
final class LookAgain {
    private static final Duration LEAST = Duration.ofMinutes(2);

    private final Clocks clocks;
    private final Instant now;

    LookAgain(Clocks clocks, Instant now) {
        this.clocks = clocks;
        this.now = now;
    }

    /**
     * When to look whether the cup is about to run over; empty when nothing was touched and the cup lasts.
     *
     * @param full how long until the cup could be full, when that comes before the next visit
     */
    Optional<Instant> floodLookAt(Step step, Optional<Duration> full) {
        boolean touched = !(step instanceof Step.Hold || step instanceof Step.Look);
        if (!touched && full.isEmpty()) {
            return Optional.empty();
        }
        Duration wait = full.orElse(clocks.floodLook());
        if (touched && wait.compareTo(clocks.floodLook()) > 0) {
            wait = clocks.floodLook();
        }
        return Optional.of(Times.later(now, wait.compareTo(LEAST) < 0 ? LEAST : wait));
    }

    /** When the result can be judged; before that nothing is to be touched. */
    Instant judgeAt(Step step) {
        if (step instanceof Step.Hold hold) {
            return hold.until();
        }
        if (step instanceof Step.Look) {
            return now;
        }
        if (step instanceof Step.MakeSafe) {
            return Times.later(now, FloodRules.LOOK_AGAIN);
        }
        boolean washing =
                step instanceof Step.ServicePart service && service.parts().contains(Part.NECK_AND_CUP);
        return Times.later(now, washing ? clocks.judge().plus(clocks.afterWashing()) : clocks.judge());
    }

    /** How long nobody comes after this step. */
    Duration nextVisit(Step step) {
        Duration until = Duration.between(now, judgeAt(step));
        return until.compareTo(clocks.judge()) < 0 ? clocks.judge() : until;
    }
}
